/** What is done with a tool before it is trusted: tag, look, wipe, air test, self-test; and wearing it. */
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { toolById, trainee, withPerson, withTool } from '../world/edit.ts';
import type { Knowledge, Tool, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot } from './presence.ts';

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

export const wear: ActKind<'wear'> = {
  minutes: () => 0,
  refuse: (world, act) => {
    const tool = toolById(world, act.tool);
    if (!tool) return 'there is no such tool on the truck';
    if (toolKind(tool.kind).wornOn === undefined) return 'that is not worn';
    const away = onFoot(world);
    if (away) return away;
    const on = trainee(world).wearing;
    if (on.includes(act.tool) === act.on) return act.on ? 'that is worn already' : 'that is not on';
    return act.on && on.some((id) => wornOn(world, id) === wornOn(world, act.tool))
      ? 'another one is worn there'
      : null;
  },
  apply: (world, act) => {
    const { id, wearing } = trainee(world);
    const now = act.on ? [...wearing, act.tool].sort() : wearing.filter((tool) => tool !== act.tool);
    return outcome(withPerson(world, id, { wearing: now }), [
      event('done', act.tool, `${toolById(world, act.tool)?.name ?? act.tool}: ${act.on ? 'on' : 'off'}.`),
    ]);
  },
  offers: (world) =>
    world.tools.flatMap((tool) =>
      [true, false].map((on) => ({
        act: { act: 'wear', tool: tool.id, on },
        label: `${on ? 'Put on' : 'Take off'} ${tool.name}`,
        by: 'tools',
        about: tool.id,
      })),
    ),
};

const wornOn = (world: World, id: string): string | undefined => {
  const tool = toolById(world, id);
  return tool ? toolKind(tool.kind).wornOn : undefined;
};
