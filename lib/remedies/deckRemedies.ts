import {deeperMember, depressedStrands, fewerStrands, flatterCourse, higherStrands, shallowerMember, anyTee, thinnerStrands, twoPoints} from "./deckMoves.js";
import {outside, remedy, type Remedies} from "./remedy.js";
import {SUPPORTS, moreInDeck, raiseStory, shorterSpan} from "./sharedRemedies.js";
import {either, less, more, set, together, type Move} from "./way.js";

const deeperDeck = remedy(/deeper member/, deeperMember);
const fewerInDeck = remedy(/fewer strands/, fewerStrands);
const depressed = remedy(/depressed ones/, depressedStrands);
const deckConcrete = remedy(/stronger concrete( in the deck)?/, more("deck.strengthPsi"));
const deckRelease = remedy(/more release strength/, either(more("deck.releaseStrengthPsi"), together(more("deck.strengthPsi"), more("deck.releaseStrengthPsi"))));
const strongerTopping = remedy(/stronger topping/, more("deck.toppingStrengthPsi"));
const thickerTopping = remedy(/thicker topping/, more("deck.toppingIn"));
const followCamber = remedy(/let the surface follow the camber/, more("topping.followShare"));

/** A load of the reader's own, in the room that the check is about. */
const ownLiveLoad: Move = (design, words) => more(`loads.rooms.${Number(/\d+$/.exec(words.check.id)?.[0]) - 1}.own.livePsf`)(design, words);

/** Bending of a deck, and what it leaves of its soffit and its strength. */
const DECK_BENDING = [moreInDeck, deeperDeck, shorterSpan] as const;
const DECK_SQUEEZE = [deckConcrete, strongerTopping, deeperDeck, shorterSpan, fewerInDeck, depressed] as const;
const DECK_YOUNG = [deckRelease, fewerInDeck, depressed, moreInDeck, shorterSpan] as const;

/** Remedies of the loads and of the deck. */
export const DECK_REMEDIES: Remedies = {
  "own live load": [
    remedy(/enter at least that/, ownLiveLoad),
    outside(/choose the room's actual use/, "only the reader knows for what a room is used"),
  ],
  "deck load": DECK_BENDING,
  "deck strength": DECK_BENDING,
  "deck shear": [deeperDeck, shorterSpan, remedy(/tees/, anyTee)],
  "deck tension": DECK_BENDING,
  "deck sustained compression": DECK_SQUEEZE,
  "deck total compression": DECK_SQUEEZE,
  "topping sustained compression": DECK_SQUEEZE,
  "topping compression": DECK_SQUEEZE,
  "minimum strength": [moreInDeck, remedy(/shallower member/, shallowerMember)],
  "transfer compression end": DECK_YOUNG,
  "transfer compression hold-down": DECK_YOUNG,
  "transfer compression midspan": DECK_YOUNG,
  "transfer tension end": DECK_YOUNG,
  "transfer tension hold-down": DECK_YOUNG,
  "transfer tension midspan": DECK_YOUNG,
  "deck development": [moreInDeck, remedy(/thinner ones/, thinnerStrands), shorterSpan],
  "deck bearing": [remedy(/longer seat/, more("edgeBeam.ledgeProjectionIn")), deckConcrete],
  "deck sag": DECK_BENDING,
  "deck camber": DECK_BENDING,
  "deck crack control": DECK_BENDING,
  "deck walking": [thickerTopping, deeperDeck, shorterSpan],
  "deck frequency": [deeperDeck, shorterSpan],
  "deck fire thickness": [thickerTopping, remedy(/carbonate/, set("deck.aggregate", "carbonate")), remedy(/lightweight aggregate/, set("deck.concrete", "sand-lightweight"))],
  "deck fire cover": [
    remedy(/higher strands/, higherStrands),
    remedy(/a frame that restrains the (floor|roof)/, set("criteria.fireRestrained", true)),
    outside(/wider stems or a coating that insulates them/, "stems are as wide as the plant's forms, and a coat is no part of a deck's design"),
  ],
  "stripping tension soffit": [SUPPORTS, remedy(/shorter piece/, less("bay.spanFt")), moreInDeck],
  "stripping compression": DECK_YOUNG,
  "hauling tension soffit": [SUPPORTS, remedy(/shorter piece/, less("bay.spanFt")), moreInDeck],
  "hauling compression": [deckConcrete, fewerInDeck],
  "deck hold-down": [remedy(/two points/, twoPoints), fewerInDeck, remedy(/flatter profile/, flatterCourse)],
  "wet topping": [followCamber, outside(/prop the member while the topping sets/, "how a deck is built is no field of its design"), deeperDeck, shorterSpan],
  "topping load": [followCamber, deeperDeck, shorterSpan],
  "topping ceiling": [raiseStory, followCamber],
};
