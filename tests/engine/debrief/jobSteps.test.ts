/** The job's usual steps against what was done: when, not at all, too early. */
import { expect, it } from 'vitest';
import { act } from '../../../src/engine/acts/act.ts';
import { kinds } from '../../../src/engine/acts/kinds.ts';
import { appendEntry, newLog } from '../../../src/engine/acts/log.ts';
import { replay } from '../../../src/engine/acts/replay.ts';
import type { Act } from '../../../src/engine/acts/types.ts';
import { componentKinds } from '../../../src/engine/catalogue/components.ts';
import { jobKinds } from '../../../src/engine/catalogue/jobs.ts';
import { isRepairKind } from '../../../src/engine/catalogue/repairs.ts';
import { jobLines } from '../../../src/engine/debrief/jobSteps.ts';
import { preconditions } from '../../../src/engine/hazards/preconditions.ts';
import { arrive, crewWorld } from '../hazards/crewScene.ts';

function linesOf(...acts: readonly Act[]): readonly string[] {
  const start = crewWorld();
  let [world, log] = [start, newLog(start, 1)];
  for (const each of acts) {
    const result = act(world, each);
    if (!result.ok) throw new Error(`${JSON.stringify(each)}: ${result.reason}`);
    world = result.world;
    log = appendEntry(log, each, world);
  }
  const replayed = replay(start, log);
  if (!replayed.ok) throw new Error(replayed.problem.words);
  return jobLines(replayed.replay);
}

it('tells what was done when, what too early and what not at all', () => {
  const lines = linesOf(
    ...arrive,
    { act: 'go', to: 'p1.butt' },
    { act: 'check-tool', tool: 'stick-1', check: 'wipe' },
    { act: 'operate', part: 'p1.tap-cutout', operation: 'open', stick: 'stick-1' },
    { act: 'operate', part: 'p1.tap-cutout', operation: 'remove-tube', stick: 'stick-1' },
    { act: 'look', part: 'p1.pole', aid: 'eyes' },
    { act: 'call-finding', on: 'p1.pole', condition: 'sound' },
    { act: 'hand-over' },
  );
  expect(lines[0]).toBe('Re-fuse a tap after a patrol, as it is usually done.');
  expect(lines.find((line) => line.includes('Lift the tube'))).toMatch(/^\d\d:\d\d, earlier than usual: /);
  expect(lines.find((line) => line.includes('Name the cause'))).toMatch(/^\d\d:\d\d: /);
  expect(lines.find((line) => line.includes('Keep everybody out'))).toMatch(/^Not done: /);
});

it('every mark of a step is an act, repair, operation or precondition that there is; at least twelve jobs', () => {
  const known: Readonly<Record<string, (id: string) => boolean>> = {
    act: (id) => Object.hasOwn(kinds, id),
    repair: isRepairKind,
    operation: (id) => componentKinds.some(({ operations }) => operations.some((each) => each.id === id)),
    precondition: (id) => preconditions.includes(id),
  };
  const unknown = jobKinds.flatMap(({ steps }) =>
    steps.flatMap(({ shownBy }) =>
      shownBy.filter((mark) => !known[mark.split(':')[0] ?? '']?.(mark.split(':')[1] ?? '')),
    ),
  );
  expect(unknown).toEqual([]);
  expect(jobKinds.length).toBeGreaterThanOrEqual(12);
  for (const { steps } of jobKinds) expect(new Set(steps.map(({ id }) => id)).size).toBe(steps.length);
});
