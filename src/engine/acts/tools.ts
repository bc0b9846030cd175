/** What is done with a tool before it is trusted: tag, look, wipe, air test, self-test; and wearing it. */
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { toolById, trainee, withPerson, withTool } from '../world/edit.ts';
import type { Knowledge, Tool, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot } from './presence.ts';
import { beyondVoice } from './talk.ts';

const checks = {
  'read-tag': { minutes: 0, label: 'Read the tag of', fine: 'The tag can be read.' },
  inspect: { minutes: 1, label: 'Look over', fine: 'Clean and whole, no cuts, cracks or scars made out.' },
  wipe: { minutes: 1, label: 'Wipe and look over', fine: 'Wiped down with a clean cloth; dry, no tracks made out.' },
  'air-test': { minutes: 1, label: 'Air-test', fine: 'Rolled up, it holds its air.' },
  'self-test': { minutes: 1, label: 'Self-test', fine: 'The tone sounds and the lamp flashes.' },
} as const;

const findsIn = (tool: Tool, check: string): { sign: string; words: string }[] =>
  tool.faults.flatMap((fault) =>
    faultKind(fault.kind)
      .signs.filter((sign) => sign.by === check)
      .map((sign) => ({ sign: `${fault.id}/${sign.id}`, words: sign.words })),
  );

function tagWords(tool: Tool): string {
  const rated = tool.ratedVolts === null ? '' : ` Rated ${tool.ratedVolts} V.`;
  return `${tool.tested === null ? 'No test date on it.' : `Tested ${tool.tested}.`}${rated}`;
}

export const checkTool: ActKind<'check-tool'> = {
  minutes: (_world, act) => checks[act.check].minutes,
  refuse: (world, act) => {
    const tool = toolById(world, act.tool);
    if (!tool) return 'there is no such tool on the truck';
    return (
      onFoot(world) ?? (toolKind(tool.kind).checks.includes(act.check) ? null : 'that is no check for such a tool')
    );
  },
  apply: (world, act) => {
    const tool = toolById(world, act.tool);
    if (!tool) throw new Error(`no tool is called ${act.tool}`);
    const { minute } = world.clock;
    const finds = findsIn(tool, act.check);
    const ok = finds.length === 0;
    const result = [...(act.check === 'read-tag' ? [tagWords(tool)] : []), ...finds.map((find) => find.words)];
    const words = result.length > 0 ? result.join(' ') : checks[act.check].fine;
    const checked = {
      wet: act.check === 'wipe' ? false : tool.wet,
      checks: { ...tool.checks, [act.check]: { minute, ok } },
    };
    const test = { on: tool.id, test: act.check, minute };
    const tests: Knowledge['tests'] = ok
      ? [{ ...test, result: words, sign: null }]
      : finds.map((find) => ({ ...test, result: find.words, sign: find.sign }));
    return outcome(
      {
        ...withTool(world, tool.id, checked),
        knowledge: { ...world.knowledge, tests: [...world.knowledge.tests, ...tests] },
      },
      [event(act.check === 'self-test' ? 'reading' : 'seen', tool.id, words)],
    );
  },
  offers: (world) =>
    world.tools.flatMap((tool) =>
      (Object.keys(checks) as (keyof typeof checks)[]).map((check) => ({
        act: { act: 'check-tool', tool: tool.id, check },
        label: `${checks[check].label} ${tool.name}`,
        by: 'tools',
        about: tool.id,
      })),
    ),
};

/** Who puts it on: oneself, or a worker beside one who is asked to. */
const wearer = (world: World, who: string | undefined) =>
  who === undefined ? trainee(world) : (world.people.find(({ id }) => id === who) ?? null);

export const wear: ActKind<'wear'> = {
  minutes: () => 0,
  refuse: (world, act) => {
    const tool = toolById(world, act.tool);
    if (!tool) return 'there is no such tool on the truck';
    if (toolKind(tool.kind).wornOn === undefined) return 'that is not worn';
    const away = onFoot(world) ?? (act.who === undefined ? null : beyondVoice(world, act.who));
    if (away) return away;
    const person = wearer(world, act.who);
    if (!person || (person.id !== trainee(world).id && person.role !== 'second')) return 'that is nobody of the crew';
    const on = person.wearing;
    if (on.includes(act.tool) === act.on) return act.on ? 'that is worn already' : 'that is not on';
    if (act.on && world.people.some(({ wearing }) => wearing.includes(act.tool))) return 'somebody else wears that';
    return act.on && on.some((id) => wornOn(world, id) === wornOn(world, act.tool))
      ? 'another one is worn there'
      : null;
  },
  apply: (world, act) => {
    const person = wearer(world, act.who);
    if (!person) throw new Error(`nobody is called ${act.who}`);
    const { id, wearing } = person;
    const now = act.on ? [...wearing, act.tool].sort() : wearing.filter((tool) => tool !== act.tool);
    const name = toolById(world, act.tool)?.name ?? act.tool;
    const words = act.who === undefined ? name : `${capital(person.name)}, ${name}`;
    return outcome(withPerson(world, id, { wearing: now }), [
      event('done', act.tool, `${words}: ${act.on ? 'on' : 'off'}.`),
    ]);
  },
  offers: (world) => [
    ...world.tools.flatMap((tool) =>
      [true, false].map((on) => ({
        act: { act: 'wear', tool: tool.id, on } as const,
        label: `${on ? 'Put on' : 'Take off'} ${tool.name}`,
        by: 'tools' as const,
        about: tool.id,
      })),
    ),
    ...secondsGloves(world).map((tool) => ({
      act: { act: 'wear', tool: tool.id, on: true, who: 'second' } as const,
      label: `Ask ${world.given.crew.secondName} to put on ${tool.name}`,
      by: 'talk' as const,
      about: tool.id,
    })),
  ],
};

/** A second pair of gloves, for a second worker who is here without. */
function secondsGloves(world: World): readonly Tool[] {
  const second = world.people.find(({ role, at }) => role === 'second' && at !== null);
  const isGloves = (id: string): boolean => wornOn(world, id) === 'hands';
  if (!second || second.wearing.some(isGloves)) return [];
  const free = world.tools.filter(
    ({ id }) => isGloves(id) && !world.people.some(({ wearing }) => wearing.includes(id)),
  );
  return free.length > 1 || trainee(world).wearing.some(isGloves) ? free : [];
}

const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);

const wornOn = (world: World, id: string): string | undefined => {
  const tool = toolById(world, id);
  return tool ? toolKind(tool.kind).wornOn : undefined;
};
