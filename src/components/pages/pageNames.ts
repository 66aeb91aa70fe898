/** The pages that a word is met on, by file name. */
export const PAGE_NAMES: Readonly<Record<string, string>> = {
  index: "Where does a floor begin?",
  loads: "What must the floor hold?",
  reduction: "When is a big floor never full?",
  deck: "Which deck spans it?",
  member: "What happens inside the member?",
  camber: "Why does it arch, and what fills the gap?",
  "edge-beam": "What carries the edge?",
  storey: "What is left of the storey?",
  record: "Why this floor?",
  trust: "How far to trust it",
  methods: "Methods and assumptions",
};
