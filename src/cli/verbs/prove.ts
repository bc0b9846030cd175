/** `prove`: explores what a drill of a scenario can come to, and says what holds, what fails and what is not known. */
import { writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { type Command, InvalidArgumentError } from 'commander';
import { parFile } from '../../engine/proof/parForm.ts';
import { type Progress, prove } from '../../engine/proof/prove.ts';
import type { Proof } from '../../engine/proof/types.ts';
import { build } from '../../engine/world/build.ts';
import { apart } from '../apart.ts';
import { type Io, type Register, writeJson } from '../io.ts';
import { type KeptProof, proofCache } from '../proofCache.ts';
import { readScenario } from '../readScenario.ts';
import { type ProveReport, proveReportSchema } from '../schemas/proveReport.ts';

interface Options {
  readonly json?: true;
  readonly workers: number;
  readonly seed: number;
  readonly par?: string;
  readonly fresh?: true;
}

type Reported = ProveReport[number];

const cacheFolder = '.cache/proofs';
const stages: readonly Progress['stage'][] = ['survey', 'route', 'par', 'traps', 'claims'];

const whole =
  (least: number) =>
  (text: string): number => {
    const number = Number(text);
    if (!Number.isInteger(number) || number < least) throw new InvalidArgumentError(`a whole number from ${least} up.`);
    return number;
  };

/** A bar on a terminal; nothing where errors go to a file. */
const barOf = (io: Io, file: string): { readonly tell: (progress: Progress) => void; readonly end: () => void } => {
  if (!process.stderr.isTTY) return { tell: () => undefined, end: () => undefined };
  return {
    tell: ({ stage, states, transitions }) => {
      const done = stages.indexOf(stage);
      const bar = `${'#'.repeat(done * 4)}${'.'.repeat((stages.length - done) * 4)}`;
      io.stderr(`\r\x1b[K[${bar}] ${basename(file)}: ${stage}, ${states} scenes, ${transitions} acts`);
    },
    end: () => io.stderr('\r\x1b[K'),
  };
};

const plain = (proof: Proof): KeptProof => proveReportSchema.element.omit({ file: true }).parse(proof);

function proveFile(io: Io, file: string, { seed, fresh }: Options): Reported {
  const { scenario, hash } = readScenario(io, file);
  const cache = proofCache(cacheFolder);
  const kept = fresh ? null : cache.get(hash, seed);
  if (kept !== null) return { file, ...kept };
  const bar = barOf(io, file);
  const proof = plain(
    prove(build(scenario, hash, seed), { seed, now: () => performance.now() / 1000, tell: bar.tell }),
  );
  bar.end();
  cache.put(proof);
  return { file, ...proof };
}

/** Proves one file in a process of its own, which leaves the proof in the cache. */
const proveApart = (file: string, { seed, fresh }: Options): Promise<void> =>
  apart(['prove', file, '--json', '--seed', String(seed), ...(fresh ? ['--fresh'] : [])], () => undefined);

const WIDTH = 20;

/** Files proved, as a bar on a terminal; nothing where errors go to a file. */
const countingBar = (io: Io, all: number): ((done: number) => void) => {
  if (!process.stderr.isTTY) return () => undefined;
  return (done) => {
    const full = Math.round((WIDTH * done) / all);
    const bar = `${'#'.repeat(full)}${'.'.repeat(WIDTH - full)}`;
    io.stderr(done === all ? '\r\x1b[K' : `\r\x1b[K[${bar}] ${done} of ${all} files proved`);
  };
};

async function inWorkers(io: Io, files: readonly string[], options: Options): Promise<void> {
  const left = [...files];
  const bar = countingBar(io, files.length);
  let done = 0;
  bar(done);
  const work = async (): Promise<void> => {
    for (let file = left.shift(); file !== undefined; file = left.shift()) {
      await proveApart(file, options);
      done += 1;
      bar(done);
    }
  };
  await Promise.all(Array.from({ length: Math.min(options.workers, files.length) }, work));
}

function print(io: Io, { file, ok, par, claims, traps, states, transitions, seconds }: Reported): void {
  const failed = claims.filter(({ outcome }) => outcome === 'fails');
  const open = claims.filter(({ outcome }) => outcome === 'not finished');
  io.stdout(
    `${file}: ${ok ? 'ok' : 'fails'}, ${claims.length - failed.length - open.length} of ${claims.length} claims hold; ${states} scenes, ${transitions} acts, ${seconds.toFixed(1)} s\n`,
  );
  if (par !== null) {
    io.stdout(
      `  par: ${par.end}, ${par.minutes} minutes (none under ${par.atLeast}), ${par.customerMinutes} customer-minutes, ${par.acts.length} acts\n`,
    );
  }
  for (const { id, words } of failed) io.stdout(`  fails ${id}: ${words}\n`);
  for (const { id, words } of open) io.stdout(`  not finished ${id}: ${words}\n`);
  for (const { minutes, words } of traps) io.stdout(`  trap at ${minutes} min: ${words}\n`);
}

function writePar(folder: string, { file, ...proof }: Reported): void {
  const made = parFile(proof);
  if (made === null) return;
  writeFileSync(join(folder, basename(file).replace(/\.ya?ml$/, '.json')), `${JSON.stringify(made)}\n`);
}

/** Adds the verb. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('prove <files...>')
    .description(
      'Explores what a drill of each scenario can come to: a safe end, par, hazards found and biting, traps.',
    )
    .option('--json', 'print a JSON array with one object a file')
    .option('--workers <n>', 'processes at a time', whole(1), 1)
    .option('--seed <n>', 'seed of the drill', whole(0), 1)
    .option('--par <folder>', "write each scenario's par there")
    .option('--fresh', 'prove again what lies in .cache/proofs')
    .addHelpText('after', '\nExit code 1: a claim fails. What is not finished is named and does not change it.')
    .action(async (files: readonly string[], options: Options) => {
      if (options.workers > 1 && files.length > 1) await inWorkers(io, files, options);
      const asked = options.workers > 1 && files.length > 1 ? { ...options, fresh: undefined } : options;
      const proofs = files.map((file) => proveFile(io, file, asked as Options));
      if (options.json) writeJson(io, proofs);
      else for (const each of proofs) print(io, each);
      if (options.par !== undefined) for (const each of proofs) writePar(options.par, each);
      if (proofs.some(({ ok }) => !ok)) io.checkFailed();
    });
};
