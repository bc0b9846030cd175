/** `circuit`: solves a scene's circuit in the state asked for and prints what every part stands at. */
import { type Command, InvalidArgumentError } from 'commander';
import { netlistOf } from '../../engine/circuit/netlistOf.ts';
import { settle } from '../../engine/circuit/settle.ts';
import { build } from '../../engine/world/build.ts';
import type { World } from '../../engine/world/types.ts';
import { printReport, reportOf } from '../circuit/reportOf.ts';
import { ground, mend, type SetState, setState } from '../circuit/sceneState.ts';
import { type Io, type Register, writeJson } from '../io.ts';
import { readScenario } from '../readScenario.ts';
import { circuitReportSchema } from '../schemas/circuitReport.ts';

interface Options {
  readonly set?: readonly string[];
  readonly ground?: readonly string[];
  readonly mend?: readonly string[];
  readonly seed: number;
  readonly netlist?: boolean;
  readonly json?: boolean;
}

const collect = (value: string, all: readonly string[] = []): readonly string[] => [...all, value];

const wholeNumber = (value: string): number => {
  const number = Number(value);
  if (!Number.isSafeInteger(number)) throw new InvalidArgumentError('Expected a whole number.');
  return number;
};

function readScene(io: Io, file: string, seed: number): World {
  const { scenario, hash } = readScenario(io, file);
  return build(scenario, hash, seed);
}

function circuit(io: Io, file: string, options: Options): void {
  let world = readScene(io, file, options.seed);
  const set: SetState[] = [];
  const mended = options.mend ?? [];
  for (const text of options.set ?? []) {
    const done = setState(world, text);
    world = done.world;
    set.push(...done.set);
  }
  for (const text of options.ground ?? []) world = ground(world, text);
  for (const fault of mended) world = mend(world, fault);
  const settled = settle(world);
  const netlist = options.netlist ? netlistOf(settled.world) : undefined;
  const grounded = world.jumpers.map(({ points }) => [...points]);
  const report = reportOf(settled, { seed: options.seed, set, grounded, mended: [...mended] });
  if (options.json) writeJson(io, circuitReportSchema.parse(netlist === undefined ? report : { ...report, netlist }));
  else io.stdout(netlist ?? printReport(report));
}

/** Adds `circuit <scenario>` to the program. */
export const register: Register = (program: Command, io: Io): void => {
  program
    .command('circuit <scenario>')
    .description('Solves the scene in a state: volts to local earth and live or dead of every part.')
    .option(
      '--set <part=state>',
      'put a part into a state (p1.tap-cutout=closed, a.generator.run=stopped)',
      collect,
      [],
    )
    .option('--ground <points>', 'join points by a jumper (p3.neutral-spool/neutral+p3.deadend/conductor)', collect)
    .option('--mend <fault>', 'take a laid fault away', collect)
    .option('--seed <number>', 'seed of the angle at which sources not in step meet', wholeNumber, 1)
    .option('--netlist', 'print the circuit that was solved as a SPICE deck for ngspice')
    .option('--json', 'print JSON only, in SI units')
    .addHelpText(
      'after',
      '\nFuses and breakers that would operate within a minute have operated; --netlist prints the circuit after that.',
    )
    .action((file: string, options: Options) => circuit(io, file, options));
};
