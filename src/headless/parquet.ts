import {renameSync, rmSync} from "node:fs";
import {DuckDBInstance, type DuckDBConnection} from "@duckdb/node-api";
import type {ParquetColumn} from "./studyColumns.js";

/** Writes tables of text to Parquet files: each appears whole under its name, or not at all. */
export class ParquetWriter {
  private constructor(private readonly connection: DuckDBConnection, private readonly columns: readonly ParquetColumn[]) {}

  static async open(columns: readonly ParquetColumn[]): Promise<ParquetWriter> {
    const instance = await DuckDBInstance.create(":memory:", {threads: "1", memory_limit: "200MB"});
    return new ParquetWriter(await instance.connect(), columns);
  }

  /** Turns a CSV file without header into a Parquet file, and removes it. */
  async write(csvFile: string, parquetFile: string): Promise<void> {
    const types = this.columns.map(({name, type}) => `${text(name)}: ${text(type)}`).join(", ");
    const unfinished = `${parquetFile}.unfinished`;
    // Empty text stays text; an empty number is none.
    const filled = this.columns.map(({name, type}) => (type === "VARCHAR" ? `coalesce("${name}", '') AS "${name}"` : `"${name}"`)).join(", ");
    await this.connection.run(`COPY (SELECT ${filled} FROM read_csv(${text(csvFile)}, header = false, columns = {${types}})) TO ${text(unfinished)} (FORMAT parquet, COMPRESSION zstd)`);
    renameSync(unfinished, parquetFile);
    rmSync(csvFile);
  }
}

const text = (value: string): string => `'${value.replaceAll("'", "''")}'`;
