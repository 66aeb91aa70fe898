import {group, number, since} from "../entries.js";

/** What levels the floor. */
export const toppingFields = group("Topping", {
  /** Part of the camber that the finished surface follows, 0 (level) to 1. */
  followShare: since(3, 0, number("surface follows the camber", "", 0, 1, 0.1, "Share of the deck's camber that the finished floor follows: 0 is a level floor, 1 a topping of uniform thickness.")),
  /** Age at which members are set and topped, days. */
  ageDays: since(3, 45, number("age when set", "days", 7, 365, 1, "Age of the members when they are set and topped; young ones have less camber.")),
});
