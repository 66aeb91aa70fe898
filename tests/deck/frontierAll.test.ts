import {seeds} from "../support/designs.js";
import {catalog} from "../support/designs.js";
import {once} from "../support/once.js";
import {searchFor, searchLaws} from "./searched.js";

for (const {id, design} of seeds) searchLaws(id, design, once(() => searchFor(design, catalog)));
