import {choice, group, number, since, toggle} from "../entries.js";

/** By which rules the deck is judged. */
export const criteriaFields = group("Criteria", {
  tensionClass: choice("tension class", {"U": "U: uncracked", "T": "T: transition", "C": "C: cracked"}, "How much tension is allowed in the soffit under full service load (ACI 318-19 24.5.2.1); a class C member may crack, and its deflection and cracks are checked instead."),
  sagLimit: since(2, "L/360", choice("sag limit", {"L/360": "span/360, live load alone", "L/480": "span/480, after partitions that could be damaged", "L/240": "span/240, after other partitions"}, "How far the floor may deflect (ACI 318-19 Table 24.2.2). After partitions are in, creep counts as well as live load.")),
  keepCamber: since(2, false, toggle("keep some camber long term", "Whether the member must still arch in the long term under sustained load.")),
  walking: since(2, "none", choice("people walking", {"quiet": "quiet rooms: people sit and read", "busy": "shops and halls: people move about", "outdoor": "open decks and bridges", "none": "not checked: cars or storage"}, "How still the floor must stay as people walk on it.")),
  fireHours: since(2, "0", choice("fire rating", {"0": "none required", "1": "1 hour", "1.5": "1 1/2 hours", "2": "2 hours", "3": "3 hours", "4": "4 hours"}, "Hours that the floor must hold back a fire below it, as the code requires for the building's type and height.")),
  fireRestrained: since(2, false, toggle("restrained in a fire", "Whether the frame around the floor keeps it from expanding as it heats; interior bays of heavy frames often count as restrained.")),
  sustainedLiveShare: number("sustained share of the live load", "", 0, 1, 0.05, "The share of the live load that stays for years: nearly all in a storage room, little in a garage. It sets sustained compression, long-term deflection and lasting camber."),
  humidityPercent: number("relative humidity", "%", 30, 100, 5, "Yearly average around the member; concrete shrinks more in drier air."),
});
