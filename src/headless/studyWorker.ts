import {renameSync, writeFileSync} from "node:fs";
import {parentPort, workerData} from "node:worker_threads";
import {readCatalog} from "../../lib/catalog.js";
import type {RawTables} from "../../lib/tables.js";
import {rowOf} from "../../lib/schemes/row.js";
import {schemesOf, type Schemes} from "../../lib/schemes/scheme.js";
import {caseAt, readStudy, type StudyCase} from "../../lib/schemes/study.js";
import {csvLines} from "./rowText.js";
import {fieldColumn, studyColumns} from "./studyColumns.js";
import type {Block} from "./studyPlan.js";

/** What a worker is started with. */
export interface WorkerStart {
  readonly studyText: string;
  readonly tables: RawTables;
}

// One thread of a study: makes the schemes of the blocks that it is sent, and writes each block to a file of text.
const {studyText, tables} = workerData as WorkerStart;
const catalog = readCatalog(tables);
const study = readStudy(studyText, catalog);
const columns = studyColumns(study).map(({name}) => name);
/** The schemes of the case at hand: its parts are shared from block to block. */
let open: {readonly of: StudyCase; readonly schemes: Schemes} | undefined;

parentPort?.on("message", ({block, csvFile}: {block: Block; csvFile: string}) => {
  let lines = "";
  for (let index = block.first; index < block.first + block.count; index++) {
    const of = caseAt(study, index);
    if (open?.of !== of) open = {of, schemes: schemesOf(of.brief, catalog, study)};
    const row = rowOf(open.schemes.at(index - of.first), {factors: catalog.carbonFactors, prices: of.brief.prices});
    lines += csvLines([{...row, index, brief: of.brief.name, ...Object.fromEntries(study.fields.map((path, i) => [fieldColumn(path), String(of.values[i])]))}], columns);
  }
  writeFileSync(`${csvFile}.unfinished`, lines);
  renameSync(`${csvFile}.unfinished`, csvFile);
  parentPort?.postMessage(block.number);
});
