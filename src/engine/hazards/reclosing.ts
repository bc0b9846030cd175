/**
 * Working near live metal while the device toward the source recloses by itself: what one slip begins is fed again, shot
 * after shot (standards/recloser.ts). Not fatal by itself, the approach is judged apart; blocking it is asked by 29 CFR
 * 1910.269(q)(2)(iii) for stringing and by most employers' rules for any work near live lines. Left out: reclosing of another circuit.
 */
import { branchesOf } from '../circuit/elementsOf.ts';
import type { Part } from '../world/types.ts';
import type { Meeting } from './meeting.ts';
import type { Moment } from './moment.ts';
import { truckVolts } from './truckTouch.ts';
import type { Reach } from './types.ts';

/** Shots after the first trip. */
const shotsOf = (part: Part): number =>
  part.state.reclosing === undefined
    ? 0
    : Math.max(
        0,
        ...branchesOf(part).map((branch) =>
          branch.type === 'series' ? (branch.protects?.sequence?.waits.length ?? 0) : 0,
        ),
      );

/** Devices that would feed a slip again. */
export function reclosing(reach: Reach, moment: Moment): readonly Meeting[] {
  if (!reach.works) return [];
  return moment.world.parts.flatMap((part) => {
    const shots = shotsOf(part);
    if (shots === 0) return [];
    const { worst, now } = truckVolts(reach, moment);
    if (worst === 0) return [];
    const quantities = (volts: number) => [
      { name: 'voltage to ground', value: volts, unit: 'V' },
      { name: 'times that it closes again', value: shots, unit: '' },
    ];
    return [
      {
        hazard: `flash:${part.id}@again`,
        mechanism: 'flash',
        part: part.id,
        point: null,
        who: reach.who,
        severity: 'serious',
        potentiallyFatal: false,
        quantities: quantities(worst),
        now: quantities(now),
        strikes: false,
        failed: ['reclosing-blocked'],
        limit: 'reclosing blocked while work goes on near live metal',
        source: '29 CFR 1910.269(q)(2)(iii); common practice',
        measure: shots,
        measureNow: now > 0 ? shots : 0,
        words: 'One slip is fed again and again.',
      },
    ];
  });
}
