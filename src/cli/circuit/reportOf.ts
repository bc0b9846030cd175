/** Builds and prints the report on a settled circuit. */

import { componentKind } from '../../engine/catalogue/components.ts';
import { angleOf, groupsIn } from '../../engine/circuit/angleOf.ts';
import { branchesOf, byId, elementId } from '../../engine/circuit/elementsOf.ts';
import type { Settled } from '../../engine/circuit/settle.ts';
import { LIVE_AMPERES, LIVE_VOLTS, TEST_OHMS } from '../../engine/circuit/solveCircuit.ts';
import { EARTH } from '../../engine/network/types.ts';
import { format } from '../../engine/units/formatQuantity.ts';
import type { CircuitReport } from '../schemas/circuitReport.ts';

type Asked = Pick<CircuitReport, 'seed' | 'set' | 'grounded' | 'mended'>;

const limits = {
  volts: LIVE_VOLTS,
  amperes: LIVE_AMPERES,
  ohms: TEST_OHMS,
  source: '29 CFR 1910.269, Table R-6 (50 V) and Appendix C, III.D.1 (1 mA, 1000 ohm)',
};

function pointsOf({ world, solution }: Settled): CircuitReport['points'] {
  return [...world.parts].sort(byId).flatMap((part) =>
    Object.keys(part.nets)
      .filter((terminal) => part.nets[terminal] !== EARTH)
      .sort()
      .map((terminal) => {
        const { point, node, volts, throughKilohm, live, sources } = solution.point(`${part.id}/${terminal}`);
        const bare = componentKind(part.kind).points[terminal] !== undefined;
        return { point, part: part.id, terminal, node, bare, volts, throughKilohm, live, sources: [...sources] };
      }),
  );
}

function branchesFor({ world, solution }: Settled): CircuitReport['branches'] {
  return [...world.parts].sort(byId).flatMap((part) =>
    branchesOf(part).flatMap((branch) => {
      const windings = branch.type === 'transformer' ? branch.windings.map((_, w) => w) : [null];
      return windings.map((winding) => ({
        part: part.id,
        branch: branch.name,
        winding,
        amperes: solution.network.worstCurrent(elementId(part.id, branch.name), winding ?? undefined),
      }));
    }),
  );
}

/** The report, in SI units. */
export function reportOf(settled: Settled, asked: Asked): CircuitReport {
  const { world, operations } = settled;
  const points = pointsOf(settled);
  const parts = [...world.parts].sort(byId).flatMap(({ id, name }) => {
    const own = points.filter(({ part }) => part === id);
    if (own.length === 0) return [];
    const volts = Math.max(...own.map((point) => point.volts));
    const throughKilohm = Math.max(...own.map((point) => point.throughKilohm));
    return [{ part: id, name, volts, throughKilohm, live: own.some(({ live }) => live) }];
  });
  return {
    report: 'loose-tie-circuit',
    version: 1,
    scenario: world.scenario,
    scenarioHash: world.scenarioHash,
    ...asked,
    operations: operations.map((operation) => ({ ...operation })),
    groups: groupsIn(world),
    angles: { ...angleOf(world) },
    limits,
    parts,
    points,
    branches: branchesFor(settled),
  };
}

const volts = (value: number): string => format(value, 'voltage', 'metric');
const amperes = (value: number): string => format(value, 'current', 'metric');

function columns(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, c) => Math.max(...rows.map((row) => row[c]?.length ?? 0)));
  return rows
    .map((row) => row.map((cell, c) => cell.padEnd(widths[c] ?? 0)).join('  '))
    .map((line) => line.trimEnd())
    .join('\n');
}

/** The report as a table for people. */
export function printReport(report: CircuitReport): string {
  const { operations, points, set, grounded, mended } = report;
  const lines = [`${report.scenario}: each terminal to local earth, sources not in step at the worst angle`];
  for (const { part, state, value } of set) lines.push(`set: ${part}.${state} = ${value}`);
  for (const joined of grounded) lines.push(`joined: ${joined.join(' + ')}`);
  for (const fault of mended) lines.push(`mended: ${fault}`);
  for (const { part, branch, amperes: a, seconds } of operations) {
    lines.push(`operated: ${part} (${branch}) at ${amperes(a)} after ${format(seconds, 'time', 'metric')}`);
  }
  if (operations.length === 0) lines.push('operated: nothing');
  const rows = points.map((point) => [
    point.part,
    point.bare ? point.terminal : `${point.terminal} (covered)`,
    volts(point.volts),
    amperes(point.throughKilohm),
    point.live ? 'LIVE' : 'dead',
    point.sources.join(', '),
  ]);
  const table = columns([['part', 'terminal', 'volts', 'through 1 kΩ', 'state', 'sources'], ...rows]);
  const note =
    'LIVE: at least 50 V and 1 mA through 1 kΩ (29 CFR 1910.269, Table R-6 and Appendix C). "dead" is what the circuit ' +
    "gives now;\nit is no permission to touch: test and ground by your employer's rules. A training aid only.";
  return `${lines.join('\n')}\n\n${table}\n\n${note}\n`;
}
