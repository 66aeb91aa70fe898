import {expect, test} from "vitest";
import {deckName} from "../../lib/deck/deckName.js";

test("a deck's name says its topping to the hundredth of an inch, as the trade writes it", () => {
  expect(deckName("8DT20", 5.220125194173306, "68-S")).toBe("8DT20+5.22 68-S");
  expect(deckName("8DT20", 2.5, "68-S")).toBe("8DT20+2.5 68-S");
  expect(deckName("8DT20", 3, "68-S")).toBe("8DT20+3 68-S");
  expect(deckName("8DT20", 0, "68-S")).toBe("8DT20 68-S");
});
