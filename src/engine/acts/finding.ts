/** Calling out what is wrong: this part, that condition. Anything may be called; nothing tells right from wrong here. */
import { isCondition } from '../catalogue/conditions.ts';
import type { Finding, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot } from './presence.ts';

/** Whatever else can be called upon besides parts, tools and people. */
export const calledOn = ['site', 'ticket', 'guards'] as const;

/** The next free id of a list whose ids are a letter and a number. */
export function nextId(letter: string, taken: readonly { readonly id: string }[]): string {
  const numbers = taken.map(({ id }) => Number(id.slice(letter.length)));
  return `${letter}${Math.max(0, ...numbers) + 1}`;
}

const exists = (world: World, on: string): boolean =>
  world.parts.some((part) => part.id === on) ||
  world.tools.some((tool) => tool.id === on) ||
  world.people.some((person) => person.id === on) ||
  calledOn.some((word) => word === on);

/** Findings that stood on the sheet when a briefing was held stay there. */
const settled = (world: World, finding: Finding): boolean =>
  world.paper.briefings.some((briefing) => finding.minute < briefing.minute);

export const callFinding: ActKind<'call-finding'> = {
  minutes: () => 0,
  refuse: (world, act) => {
    const away = onFoot(world);
    if (away) return away;
    if (!exists(world, act.on)) return 'there is no such thing here';
    if (!isCondition(act.condition)) return 'that is no condition on the list';
    const { confidence } = act;
    if (confidence !== undefined && !(confidence >= 0 && confidence <= 1)) return 'how sure goes from 0 to 1';
    const same = (finding: Finding): boolean => finding.on === act.on && finding.condition === act.condition;
    return world.paper.findings.some(same) ? 'that is on the sheet already' : null;
  },
  apply: (world, act) => {
    const finding: Finding = {
      id: nextId('f', world.paper.findings),
      on: act.on,
      condition: act.condition,
      minute: world.clock.minute,
      confidence: act.confidence ?? null,
    };
    return outcome({ ...world, paper: { ...world.paper, findings: [...world.paper.findings, finding] } }, [
      event('done', act.on, 'Written on the sheet.'),
    ]);
  },
  offers: () => [],
};

export const withdrawFinding: ActKind<'withdraw-finding'> = {
  minutes: () => 0,
  refuse: (world, act) => {
    const finding = world.paper.findings.find(({ id }) => id === act.finding);
    if (!finding) return 'there is no such finding on the sheet';
    return settled(world, finding) ? 'the crew was briefed on it' : null;
  },
  apply: (world, act) =>
    outcome(
      {
        ...world,
        paper: {
          ...world.paper,
          findings: world.paper.findings.filter(({ id }) => id !== act.finding),
          plans: world.paper.plans.map((plan) => (plan.finding === act.finding ? { ...plan, finding: null } : plan)),
        },
      },
      [event('done', null, 'Struck off the sheet.')],
    ),
  offers: (world) =>
    world.paper.findings.map((finding) => ({
      act: { act: 'withdraw-finding', finding: finding.id },
      label: `Withdraw finding ${finding.id.slice(1)}`,
      by: 'paper',
      about: finding.on,
    })),
};
