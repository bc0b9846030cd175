/** `qualify`: holds every model against outside values and prints the report. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Command } from 'commander';
import { compareCase } from '../../engine/qualification/comparePhasors.ts';
import { allowedWords, differenceWords, withUnit } from '../../engine/qualification/differenceWords.ts';
import { type NetworkCase, randomCases, sceneCases } from '../../engine/qualification/networkCases.ts';
import { runChecks } from '../../engine/qualification/runChecks.ts';
import { checkKinds, type QualifiedCheck } from '../../engine/qualification/types.ts';
import { build } from '../../engine/world/build.ts';
import { root } from '../../setup/run.mjs';
import { type Io, type Register, writeJson } from '../io.ts';
import { solveWithNgspice } from '../oracle/solveWithNgspice.ts';
import { readScenario } from '../readScenario.ts';
import { type QualifyReport, qualifyReportSchema } from '../schemas/qualifyReport.ts';

interface Options {
  readonly json?: boolean;
  readonly ngspice: boolean;
}

const shippedCases = (io: Io): readonly NetworkCase[] => {
  const folder = join(root, 'scenarios');
  const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  return files.sort().flatMap((name) => {
    const { scenario, hash } = readScenario(io, join(folder, name));
    return sceneCases(build(scenario, hash, 1));
  });
};

/** Lines of the report that need ngspice; one simulator, so one after the other. */
async function againstNgspice(cases: readonly NetworkCase[]): Promise<readonly QualifiedCheck[]> {
  const lines: QualifiedCheck[] = [];
  for (const network of cases) {
    lines.push(
      compareCase(network, await solveWithNgspice(network), 'ngspice by eecircuit-engine, AC analysis at 60 Hz'),
    );
  }
  return lines;
}

const asJson = (report: readonly QualifiedCheck[]): QualifyReport =>
  qualifyReportSchema.parse(
    report.map(({ ok, id, model, quantity, input, ours, reference, unit, difference, tolerance, source, kind }) => ({
      ok,
      id,
      model,
      quantity,
      input,
      ours: Number.isFinite(ours) ? ours : null,
      reference,
      unit,
      difference: Number.isFinite(difference) ? difference : null,
      tolerance,
      source,
      kind,
    })),
  );

const short = (value: number): string => (Number.isFinite(value) ? String(Number(value.toPrecision(6))) : 'none');

function printCheck(check: QualifiedCheck): string {
  const { ok, quantity, input, ours, reference, unit, source, kind } = check;
  const numbers = `${short(ours)} against ${withUnit(short(reference), unit)}; difference ${differenceWords(check)}, allowed ${allowedWords(check)}`;
  return `  ${ok ? 'ok  ' : 'FAIL'}  ${quantity} (${input}): ${numbers}\n        ${kind}: ${source}`;
}

const count = (report: readonly QualifiedCheck[]): string => {
  const failed = report.filter(({ ok }) => !ok).length;
  return `${report.length} checks, ${failed} failed`;
};

/** The report as text: checks by model, then counts by kind. */
export function printReport(report: readonly QualifiedCheck[]): string {
  const models = [...new Set(report.map(({ model }) => model))];
  const groups = models.map((model) => {
    const own = report.filter((check) => check.model === model);
    return `${model}: ${count(own)}\n${own.map(printCheck).join('\n')}\n`;
  });
  const kinds = checkKinds.map((kind) => `  ${kind}: ${count(report.filter((check) => check.kind === kind))}`);
  const note =
    'A table that is read as printed shows that it was copied right, no more. Common practice and values from memory are\n' +
    'listed and not counted as published. A training aid only: it qualifies no line, tool or person.';
  return `${groups.join('\n')}\nBy kind\n${kinds.join('\n')}\nAll: ${count(report)} in ${models.length} models\n\n${note}\n`;
}

async function qualify(io: Io, { json, ngspice }: Options): Promise<void> {
  const compared = ngspice ? await againstNgspice([...shippedCases(io), ...randomCases()]) : [];
  const report = [...runChecks(), ...compared];
  if (json) writeJson(io, asJson(report));
  else io.stdout(printReport(report));
  if (report.some(({ ok }) => !ok)) io.checkFailed();
}

/** Adds `qualify` to the program. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('qualify')
    .description('Holds every model against published values and against ngspice, and prints the differences.')
    .option('--json', 'print a JSON array with one object a check, each with ok')
    .option('--no-ngspice', 'leave out the circuits that ngspice solves as well')
    .action((options: Options) => qualify(io, options));
};
