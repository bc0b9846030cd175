/** The job briefing. Its five subjects: 29 CFR 1910.269(c)(2); a lone worker plans as if briefed, (c)(5). */
import { briefingTopics } from '../catalogue/controls.ts';
import type { World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot } from './presence.ts';

const known = (topic: string): boolean => briefingTopics.some((word) => word === topic);

const crewHere = (world: World): string[] =>
  world.people.filter(({ role, at }) => (role === 'trainee' || role === 'second') && at !== null).map(({ id }) => id);

export const brief: ActKind<'brief'> = {
  minutes: (_world, act) => Math.max(1, act.topics.length),
  refuse: (world, act) => {
    const away = onFoot(world);
    if (away) return away;
    if (act.topics.length === 0) return 'a briefing without a subject is none';
    if (!act.topics.every(known)) return 'that is none of the five subjects';
    return new Set(act.topics).size === act.topics.length ? null : 'a subject is named twice';
  },
  apply: (world, act) => {
    const heard = crewHere(world);
    const briefing = { minute: world.clock.minute, topics: [...act.topics].sort(), heard, rescue: act.rescue };
    return outcome({ ...world, paper: { ...world.paper, briefings: [...world.paper.briefings, briefing] } }, [
      event(
        'done',
        null,
        heard.length > 1 ? 'The crew has gone through the sheet.' : 'You have gone through the sheet alone.',
      ),
    ]);
  },
  offers: () => [
    {
      act: { act: 'brief', topics: briefingTopics, rescue: true },
      label: 'Hold the briefing: all five subjects, rescue made ready',
      by: 'paper',
      about: null,
    },
    {
      act: { act: 'brief', topics: ['procedures'], rescue: false },
      label: 'Hold a short briefing: who does what',
      by: 'paper',
      about: null,
    },
  ],
};
