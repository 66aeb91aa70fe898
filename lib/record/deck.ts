import {deckName} from "../deck/deckName.js";
import type {LimitName} from "../deck/limits.js";
import {deckPieces, piecesSentence} from "../deck/pieces.js";
import type {Candidate} from "../deck/search.js";
import {reasonState} from "../design/reasons.js";
import type {Evaluation} from "../evaluate.js";
import {isReduced} from "../loads/floorLoads.js";
import {ownPsf} from "../member/member.js";
import {pairText} from "../pair.js";
import {shown, sentence, type Sentence} from "../sentence.js";
import {decimals, feetAndInches, feetText} from "../units.js";
import {checksOf} from "./checkGroups.js";
import type {Compared, KindTried, SpanTried} from "./compared.js";
import type {Alternatives, Fact, RecordSection, RecordTable} from "./parts.js";

/** Other decks that a record lists. */
const MOST_DECKS = 5;

/** The record's section on the deck, with the decks, the kinds of deck and the spans that it was compared with. */
export function deckSection({design, member, deck}: Evaluation, ways: Compared): RecordSection {
  const {deck: input, bay} = design;
  const fact = (label: string, value: Sentence): Fact => ({label, value});
  const pieces = deckPieces(design, member);
  const chosen = deckName(input.member, input.toppingIn, input.pattern);
  const load = pairText(deck.demandPsf, deck.safe.safeLoadPsf);
  const release = pairText(deck.transfer.releaseStrengthNeededPsi, input.releaseStrengthPsi);
  return {
    id: "deck", title: "Deck",
    decision: sentence`${chosen} spans ${shown("span, in", feetText(bay.spanFt))} and carries ${shown("safe load, psf", `${load.given} psf`)} safely, where ${shown("demand, psf", `${load.asked} psf`)} is required${isReduced(deck.load.governing) ? ", its live load reduced" : ""}; ${deck.safe.governs} governs.`,
    facts: [
      fact("Concrete", `${decimals(input.strengthPsi)} psi ${input.concrete}, ${release.given} psi at release (${release.asked} psi needed)`),
      fact("Strands", `${member.layout.count} of ${member.layout.strand.diameterIn} in, ${member.layout.profile === "straight" ? "straight" : "depressed"}; centroid ${decimals(member.layout.centroidCenterIn, 2)} in above the soffit at midspan, ${decimals(member.layout.centroidEndIn, 2)} in at the ends`),
      fact("Effective prestress", sentence`${shown("effective prestress, ksi", `${decimals(deck.midspan.losses.effectiveStressKsi)} ksi`)} after ${decimals(deck.midspan.losses.totalKsi)} ksi of losses`),
      fact("Weight", `${decimals(ownPsf(member))} psf with topping`),
      fact("Depth", feetAndInches(member.compression.depthIn)),
      fact("Pieces", sentence`${shown("pieces", decimals(pieces.perFloor))} for one floor, each ${shown("piece, tons", `${decimals(pieces.weightTon, 1)} tons`)}. ${piecesSentence(design, member)}`),
    ],
    alternatives: [otherDecks(chosen, ways.candidates), kinds(ways.kinds)].filter(({ways: some}) => some.length > 0),
    tables: ways.spans.length > 0 ? [otherSpans(chosen, bay.spanFt, ways.spans)] : [],
    checks: checksOf("Deck", deck.checks), reason: reasonState(design, "deck"),
  };
}

function otherDecks(chosen: string, candidates: readonly Candidate[]): Alternatives {
  const others = candidates.filter(({id}) => id !== chosen).slice(0, MOST_DECKS);
  return {title: "Other decks", ways: others.map(({id, reason}) => ({name: id, outcome: reason}))};
}

function kinds(tried: readonly KindTried[]): Alternatives {
  return {title: "Kinds of deck, and how close each comes", ways: tried.map((kind) => ({name: kind.name, outcome: kindWords(kind)}))};
}

/** How near a kind of deck comes: "None works: 4HC12 78-S carries 24 of the 43 psf asked, at its strongest; ...". */
function kindWords({considered, nearest: {id, works, reason, measures}}: KindTried): string {
  const outcome = works
    ? `${id} works, ${decimals(measures.depthIn, measures.depthIn % 1 ? 1 : 0)} in deep and ${decimals(measures.weightPsf)} psf in weight.`
    : `None works: ${id} ${reason.charAt(0).toLowerCase()}${reason.slice(1)}`;
  return considered ? outcome : `${outcome} The search leaves this kind out.`;
}

function otherSpans(chosen: string, spanFt: number, spans: readonly SpanTried[]): RecordTable {
  return {
    title: "Other spans, all else unchanged",
    heads: ["Span", "Required", `${chosen} carries`, "What governs it", "First choice of the search there"],
    rows: spans.map((one) => {
      const {asked, given} = pairText(one.askedPsf, one.safePsf);
      return [
        `${feetText(one.spanFt)}${one.spanFt === spanFt ? ", as designed" : ""}`, `${asked} psf`, `${given} psf`,
        `${one.governs}${one.carries ? "" : `; ${stops(one.gates)}`}`,
        one.first ? `${one.first.id}, ${decimals(one.first.measures.depthIn, one.first.measures.depthIn % 1 ? 1 : 0)} in deep` : "none works",
      ];
    }),
  };
}

/** Why a deck does not do on a span: for want of strength, or for a gate that it does not pass. */
function stops([gate]: readonly LimitName[]): string {
  return gate ? `${gate} fails` : "too little";
}
