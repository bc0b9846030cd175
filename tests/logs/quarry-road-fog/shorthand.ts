import type { Act } from '../../../src/engine/acts/types.ts';
import type { Aid } from '../../../src/engine/senses/types.ts';

/** Acts as one says them; the good stick and the good detector are meant unless another is named. */
export const go = (to: string): Act => ({ act: 'go', to });
export const ask = (who: string, ...topics: readonly string[]): Act[] =>
  topics.map((about) => ({ act: 'ask', who, about }));
export const tell = (who: string, what: string): Act => ({ act: 'tell', who, what });
export const look = (aid: Aid, ...parts: readonly string[]): Act[] => parts.map((part) => ({ act: 'look', part, aid }));
export const find = (on: string, condition: string, confidence?: number): Act => ({
  act: 'call-finding',
  on,
  condition,
  ...(confidence === undefined ? {} : { confidence }),
});
export const check = (tool: string, how: Extract<Act, { act: 'check-tool' }>['check']): Act => ({
  act: 'check-tool',
  tool,
  check: how,
});
export const wear = (...tools: readonly string[]): Act[] => tools.map((tool) => ({ act: 'wear', tool, on: true }));
export const primary = (point: string, tool = 'detector-1'): Act => ({ act: 'test', point, tool, stick: 'stick-1' });
export const secondary = (...points: readonly string[]): Act[] =>
  points.map((point) => ({ act: 'test', point, tool: 'tester-1', stick: null }));
export const byStick = (part: string, operation: string, stick = 'stick-1'): Act => ({
  act: 'operate',
  part,
  operation,
  stick,
});
export const byHand = (part: string, operation: string): Act => ({ act: 'operate', part, operation, stick: null });
export const owner = (part: string, operation: string): Act => ({ act: 'owner', part, operation });
export const tag = (part: string, on = true): Act => ({ act: 'tag', part, on });
export const plan = (finding: string | null, control: string, by = 'trainee'): Act => ({
  act: 'plan',
  finding,
  control,
  by,
});
export const ground = (tool: string, stick: string | null, ...points: readonly string[]): Act => ({
  act: 'ground',
  tool,
  points,
  stick,
});
export const unground = (jumper: string, stick: string | null = 'stick-1'): Act => ({ act: 'unground', jumper, stick });
export const repair = (part: string, how: string): Act => ({ act: 'repair', part, repair: how });
export const aloft = (zone: 'below' | 'work'): Act => ({ act: 'aloft', pole: 'p2', by: 'bucket', zone });
export const support = (on: boolean): Act => ({ act: 'support', part: 's1.phase', on });
export const wait = (minutes: number): Act => ({ act: 'wait', minutes });
