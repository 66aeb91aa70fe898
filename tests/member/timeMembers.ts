import {memberWith} from "../support/members.js";

/** Members with each course of strands, bare and topped, for camber by time steps. */
export const TIME_MEMBERS = {
  "straight": () => memberWith("10DT24", "88-S"),
  "straight, topped": () => memberWith("10DT24", "88-S", {toppingIn: 2}),
  "one-point": () => memberWith("12DT32", "128-D1"),
  "two-point": () => memberWith("12DT32", "148-D2"),
  "two-point, topped": () => memberWith("12DT32", "148-D2", {toppingIn: 2}),
};
