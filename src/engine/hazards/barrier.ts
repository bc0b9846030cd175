/**
 * What stands between a hand and metal, and whether it counts. A stick, arm or glove counts when it is rated, in
 * test, whole, and made ready as its rule asks (sticks: 29 CFR 1910.269(j)(2); gloves: 1910.137(c)(2)). One that
 * fails any of it is taken as absent; no resistance is made up for it. Left out: how much a bad one would still hold
 * back; sleeves, which approach.ts asks about.
 */
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import type { ToolKind } from '../catalogue/types.ts';
import type { Volts } from '../units/quantities.ts';
import { toolById } from '../world/edit.ts';
import type { Tool, World } from '../world/types.ts';
import { isSized } from './groundSize.ts';
import type { Meeting } from './meeting.ts';
import { failing, faulty, isOfTag } from './readiness.ts';
import type { Through } from './types.ts';

export interface Barrier {
  /** Something that counts is between. */
  readonly holds: boolean;
  /** Why what was relied on does not count. */
  readonly failed: readonly string[];
}

const ofStick = ['tool-rated', 'tool-in-test', 'tool-clean-dry', 'tool-sound'] as const;
const ofArm = ['tool-rated', 'tool-in-test', 'tool-sound'] as const;
const ofGloves = ['gloves-rated', 'gloves-in-test', 'gloves-air-tested', 'tool-sound'] as const;

/** Phase-to-phase volts to which a barrier at so many volts to ground must be rated, 1910.137 Table I-4 note 1. */
export const ratingFor = (toGround: Volts): Volts => toGround * Math.sqrt(3);

const insulates = (tool: Tool | null): readonly string[] | null => {
  if (tool === null) return null;
  const kind = toolKind(tool.kind);
  if (kind.barrier === 'stick') return ofStick;
  return kind.supports === true ? ofArm : null;
};

/** The barrier of a touch at so many volts to ground. */
export function barrierOf(world: World, who: string, through: Through, toGround: Volts): Barrier {
  const volts = ratingFor(toGround);
  const failed: string[] = [];
  const stick = through.stick === null ? null : toolById(world, through.stick);
  const asked = stick === null ? null : insulates(stick);
  if (stick !== null && asked !== null) {
    const lacking = failing(world, asked, { tool: stick.id, volts });
    if (lacking.length === 0) return { holds: true, failed: [] };
    failed.push(...lacking);
  }
  if (through.gloves !== null) {
    const lacking = failing(world, ofGloves, { who, tool: through.gloves, volts });
    if (lacking.length === 0) return { holds: true, failed: [] };
    failed.push(...lacking);
  }
  return { holds: false, failed };
}

/**
 * Whether what is between may well hold all the same: rated, dry, and nothing wrong with it but a date or a check left
 * out. It counts as absent when the act is judged; that it lets somebody be hurt now is not made up either.
 */
export function mayHold(world: World, who: string, through: Through, toGround: Volts): boolean {
  const volts = ratingFor(toGround);
  const whole = (id: string, asked: Parameters<typeof failing>[1]): boolean => {
    const tool = toolById(world, id);
    if (tool === null || failing(world, asked, { who, tool: id, volts }).length > 0) return false;
    return tool.faults.every((fault) => faultKind(fault.kind).benign || isOfTag(fault));
  };
  const { stick, gloves } = through;
  return (
    (stick !== null && insulates(toolById(world, stick)) !== null && whole(stick, ['tool-rated', 'tool-clean-dry'])) ||
    (gloves !== null && whole(gloves, ['gloves-rated']))
  );
}

/** Kinds that somebody's life hangs on. */
const isTrusted = ({ barrier, testsOf, supports, lifts, clamps, guards }: ToolKind): boolean =>
  barrier !== undefined ||
  testsOf !== undefined ||
  supports === true ||
  lifts !== undefined ||
  clamps !== undefined ||
  guards !== undefined;

/** Whether a tool that people trust their life to would fail them: a laid fault, or a test out of date. */
export function barrierLosses(world: World): readonly Meeting[] {
  return world.tools.flatMap((tool) => {
    const kind = toolKind(tool.kind);
    if (!isTrusted(kind)) return [];
    const failed = [
      ...failing(world, ['tool-in-test'], { tool: tool.id }),
      ...(faulty(tool) ? ['tool-sound'] : []),
      ...(kind.clamps !== undefined && !isSized(world, tool) ? ['ground-sized'] : []),
    ].sort();
    return failed.length === 0 ? [] : [lossOf(tool, failed)];
  });
}

const lossOf = (tool: Tool, failed: readonly string[]): Meeting => ({
  hazard: `barrier-loss:${tool.id}`,
  mechanism: 'barrier-loss',
  part: tool.id,
  point: null,
  who: '',
  severity: 'fatal',
  potentiallyFatal: true,
  quantities: [],
  now: [],
  strikes: false,
  failed,
  limit: 'a barrier or tester that fails its own rule counts as none',
  source: toolKind(tool.kind).source,
  measure: failed.length,
  measureNow: failed.length,
  words: `${tool.name}: what is trusted to it, nobody knows that it holds.`,
});
