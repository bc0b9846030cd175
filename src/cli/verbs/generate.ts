/** `generate`: variants of scenarios, drawn by a seed, each checked and proved in short, written as scenario files. */
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { type Command, InvalidArgumentError, Option } from 'commander';
import { parFile } from '../../engine/proof/parForm.ts';
import { limits } from '../../engine/scenario/limits.ts';
import { type BoundsFile, parseBounds } from '../../engine/variants/boundsForm.ts';
import { type GenerateOptions, type Made, settled, summed, variantAt } from '../../engine/variants/generate.ts';
import { type Base, type Grade, plainBounds, rejections } from '../../engine/variants/types.ts';
import { root } from '../../setup/run.mjs';
import { apart } from '../apart.ts';
import { BadUse, type Io, type Register } from '../io.ts';
import { readScenario } from '../readScenario.ts';

interface Options {
  readonly seed: number;
  readonly count: number;
  readonly grade?: Grade;
  readonly out: string;
  readonly from?: readonly string[];
  readonly bounds?: string;
  readonly par?: string;
  readonly workers: number;
  /** Of a worker: which numbers are its own. */
  readonly part?: string;
}

const whole =
  (least: number, most: number) =>
  (text: string): number => {
    const number = Number(text);
    if (text.trim() === '' || !Number.isInteger(number) || number < least || number > most) {
      throw new InvalidArgumentError(`a whole number from ${least} to ${most}.`);
    }
    return number;
  };

const library = join(root, 'scenarios');

const readBounds = (io: Io, file: string | undefined): BoundsFile => {
  if (file === undefined) return { name: 'all that can be varied', bases: null, bounds: plainBounds };
  const read = parseBounds(io.readFile(file, 4 * limits.fileLength), file);
  if (read.ok) return read.file;
  const lines = read.problems.map((problem) => `  ${file}:${problem.line}:${problem.column} ${problem.message}`);
  throw new BadUse(`${file} holds no bounds:\n${lines.join('\n')}`);
};

/** The scenarios to draw from: files named, else those of the bounds, else the library's of the grade, else all of it. */
function basesOf(io: Io, { from, grade }: Options, ids: readonly string[] | null): readonly Base[] {
  const shipped = readdirSync(library)
    .filter((name) => name.endsWith('.yaml'))
    .sort();
  const unknown = (ids ?? []).find((id) => !shipped.includes(`${id}.yaml`));
  if (unknown !== undefined) throw new BadUse(`the bounds draw from ${unknown}, which is not in the library`);
  const files = from ?? (ids?.map((id) => `${id}.yaml`) ?? shipped).map((name) => join(library, name));
  const read = files.map((file) => ({ ...readScenario(io, file), text: io.readFile(file, 4 * limits.fileLength) }));
  const fits = read.filter(({ scenario }) => scenario.grade === grade);
  const chosen = from === undefined && ids === null && fits.length > 0 ? fits : read;
  return chosen.map(({ scenario, text }) => ({ id: scenario.id, text }));
}

const numbers = (count: number, part: string | undefined): readonly number[] => {
  const [first = 0, step = 1] = part?.split('/').map(Number) ?? [];
  return Array.from({ length: count }, (_, i) => i + 1).filter((number) => (number - 1) % step === first);
};

/** A line on a terminal; nothing where errors go to a file. */
const telling = (io: Io): ((words: string) => void) =>
  process.stderr.isTTY ? (words) => io.stderr(`\r\x1b[K${words}`) : () => undefined;

/** The numbers drawn by processes, each its own share; what they print is what would be drawn here. */
async function inWorkers(args: readonly string[], workers: number, made: (each: Made) => void): Promise<void> {
  await Promise.all(
    Array.from({ length: workers }, (_, i) =>
      apart(['generate', ...args, '--part', `${i}/${workers}`], (line) => made(JSON.parse(line) as Made)),
    ),
  );
}

const argsOf = ({ seed, count, grade, out, from, bounds }: Options): readonly string[] => [
  '--seed',
  String(seed),
  '--count',
  String(count),
  '--out',
  out,
  ...(grade === undefined ? [] : ['--grade', String(grade)]),
  ...(from === undefined ? [] : ['--from', ...from]),
  ...(bounds === undefined ? [] : ['--bounds', bounds]),
];

async function drawn(io: Io, generating: GenerateOptions, options: Options): Promise<readonly Made[]> {
  const { count } = options;
  const workers = Math.min(options.workers, count);
  const all: Made[] = [];
  const tell = telling(io);
  const add = (each: Made): void => {
    all.push(each);
    tell(`${all.filter(({ variant }) => variant !== null).length} of ${count}, ${all.length} numbers drawn for`);
  };
  if (workers > 1) await inWorkers(argsOf(options), workers, add);
  else for (const number of numbers(count, undefined)) add(variantAt(generating, number));
  tell('');
  return settled(generating, all);
}

function write(io: Io, { variant, number }: Made, { out, par }: Options): void {
  if (variant === null) {
    io.stdout(`number ${number}: given up\n`);
    return;
  }
  const { id, yaml, difficulty, proof } = variant;
  const file = join(out, `${id}.yaml`);
  writeFileSync(file, yaml);
  const { grade, points, margin, hazards, lookAlikes, acts } = difficulty;
  io.stdout(
    `${file}: grade ${grade} (${points} points: least margin ${margin}, ${hazards} ways to harm, ${lookAlikes} look-alikes, ${acts} acts), ${proof.par?.end} in ${proof.par?.minutes} minutes\n`,
  );
  if (par !== undefined) writeFileSync(join(par, `${basename(id)}.json`), `${JSON.stringify(parFile(proof))}\n`);
}

const rejectedWords = (made: readonly Made[]): readonly string[] => {
  const counts = summed(made.map(({ rejected }) => rejected));
  return rejections.flatMap((name) => {
    const reasons = Object.entries(counts[name]).sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
    const times = reasons.reduce((sum, [, each]) => sum + each, 0);
    if (times === 0) return [];
    const said = reasons.slice(0, 3).map(([why, each]) => `    ${each} × ${why}\n`);
    return [`  ${name} ${times}:\n${said.join('')}`];
  });
};

async function generateFiles(io: Io, options: Options): Promise<void> {
  const { seed, count, grade, out, part, par } = options;
  const { bases: ids, bounds } = readBounds(io, options.bounds);
  const bases = basesOf(io, options, ids);
  const generating: GenerateOptions = { seed, bases, bounds, ...(grade === undefined ? {} : { grade }) };
  if (part !== undefined) {
    for (const number of numbers(count, part)) io.stdout(`${JSON.stringify(variantAt(generating, number))}\n`);
    return;
  }
  const made = await drawn(io, generating, options);
  mkdirSync(out, { recursive: true });
  if (par !== undefined) mkdirSync(par, { recursive: true });
  for (const each of made) write(io, each, options);
  const kept = made.filter(({ variant }) => variant !== null).length;
  const draws = made.reduce((sum, each) => sum + each.draws, 0);
  io.stdout(
    `${kept} of ${draws} draws kept; rejected:${kept === draws ? ' none' : ''}\n${rejectedWords(made).join('')}`,
  );
  if (kept < count) io.checkFailed();
}

/** Adds the verb. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('generate')
    .description('Draws variants of scenarios by a seed, proves each in short and writes them as scenario files.')
    .requiredOption('--seed <n>', 'the same seed gives the same files', whole(0, 2 ** 32 - 1))
    .requiredOption('--out <folder>', 'where the files go')
    .option('--count <n>', 'how many', whole(1, 10_000), 1)
    .option('--grade <n>', 'only variants of this difficulty, 1 to 3', whole(1, 3))
    .option('--from <files...>', 'scenarios to vary, in turn; else the library, of the grade where one is asked for')
    .option('--bounds <file>', 'what may vary and how far, YAML or JSON (loose-tie schema bounds)')
    .option('--par <folder>', "write each variant's par there")
    .option('--workers <n>', 'processes at a time; the files are the same', whole(1, 64), 1)
    .addOption(new Option('--part <i/n>', 'of a worker').hideHelp())
    .addHelpText('after', '\nExit code 1: fewer than asked for were found.')
    .action((options: Options) => generateFiles(io, options));
};
