/**
 * Named habits, each a small policy over what the engine lets it perceive. The careful one goes survey, ask, check, sound, test,
 * brief, guard, puts a fuse of a sound pole back by stick, reports, and hands over what else there is with sources named. Each
 * careless one differs by the one habit that it is named for. Shares of lapses are our own choices.
 */
import { conditions } from '../catalogue/conditions.ts';
import { aids } from '../senses/types.ts';
import type { Stand } from '../world/types.ts';
import { putFusesBack } from './putBack.ts';
import {
  arrive,
  brief,
  guard,
  handsOnAll,
  overControl,
  report,
  shutDogIn,
  testDevices,
  workAloft,
  workDevices,
} from './steps.ts';
import { askAll, believed, checkTools, lookRound, type Survey, soundPoles, surveyScene } from './survey.ts';
import type { Doing, Habit, HabitId, Scene, Self } from './types.ts';

const onGround = ({ stands }: Scene): readonly Stand[] => stands.filter(({ aloft }) => aloft === null);
const outside = (scene: Scene): readonly Stand[] => onGround(scene).filter(({ id }) => !id.endsWith('.butt'));

/** Everything, from every side but the butt, in an order of one's own. */
const everywhere = (self: Self): Survey => ({
  stands: (scene) => self.dice.shuffled(outside(scene)),
  sees: () => true,
  calls: 'what-it-means',
  stopsAfterFirst: false,
  lapse: 0.02,
});

/** Nobody stands working beside heavy traffic that nothing holds; who has no vehicle for a barrier stays off. */
const isRoadBusy = ({ site, guards }: Scene): boolean => site.traffic === 'heavy' && !(guards.cones && guards.barrier);

/** Thunder or wind: nothing is held up to a line. */
const isStormCalled = (scene: Scene): boolean =>
  believed(scene).some(({ on, condition }) => on === 'site' && ['lightning', 'wind-too-strong'].includes(condition));

function* begin(self: Self, isEnough: () => boolean = () => false): Doing {
  yield* arrive('clear');
  yield* askAll(self);
  // Whoever is there is seen before the tape sends them away.
  yield* lookRound(self, isEnough);
  yield { act: 'tell', who: 'dispatcher', what: 'block-reclosing' };
  yield { act: 'listen' };
  yield* guard();
}

function* finish(self: Self): Doing {
  yield* brief(self);
  yield* report(self);
  yield { act: 'hand-over' };
}

/** Whether something on the line itself is wrong, which somebody has to come for. */
const isLeftToMend = (scene: Scene): boolean =>
  believed(scene).some(({ on }) => scene.parts.some(({ id }) => id === on));

function* finishWork(self: Self): Doing {
  yield* brief(self);
  const isBack = !isRoadBusy(self.scene()) && (yield* putFusesBack(self));
  yield* report(self);
  if (isBack) {
    yield { act: 'tell', who: 'dispatcher', what: 'cause-found' };
    yield { act: 'tell', who: 'dispatcher', what: 'restored' };
  }
  yield { act: isBack && !isLeftToMend(self.scene()) ? 'close-out' : 'hand-over' };
}

/** Everything that the careful one does, by this way of surveying. */
function* carefully(self: Self, survey: Survey, extra?: (self: Self) => Doing): Doing {
  yield* begin(self);
  yield* surveyScene(self, survey);
  yield* shutDogIn(self);
  yield* checkTools(self);
  if (!isRoadBusy(self.scene()) && !isStormCalled(self.scene())) {
    yield* soundPoles(self);
    yield* testDevices(self);
  }
  if (extra !== undefined) yield* extra(self);
  yield* finishWork(self);
}

function* rushesObvious(self: Self): Doing {
  yield* arrive('under-line');
  yield* workDevices(self, 3);
  yield* workAloft(self, 2);
  yield { act: 'close-out' };
}

function* stopsAfterFirst(self: Self): Doing {
  yield* begin(self, () => self.scene().paper.findings.length > 0);
  yield* surveyScene(self, { ...everywhere(self), stopsAfterFirst: true });
  yield* finish(self);
}

/** Only what lies ahead from where the truck stopped: no step aside, no look behind. */
function* neverTurnsRound(self: Self): Doing {
  yield* begin(self);
  const at = self.scene().people.find(({ role }) => role === 'trainee')?.at;
  yield* surveyScene(self, {
    ...everywhere(self),
    stands: (scene) => scene.stands.filter(({ id }) => id === at),
    sees: (part, stand) => part.at[1] >= stand.feet[1],
  });
  yield* finish(self);
}

function* neverTests(self: Self): Doing {
  yield* begin(self);
  yield* surveyScene(self, everywhere(self));
  yield* checkTools(self);
  yield* brief(self);
  if (!(yield* workAloft(self, 3))) {
    yield* workDevices(self, 4);
    yield* handsOnAll(self, 12);
  }
  yield* report(self);
  yield { act: 'hand-over' };
}

/** So many tries of whatever is on offer, a look or a call among them. */
const tries = 30;
function* random(self: Self): Doing {
  const { dice } = self;
  yield* arrive(dice.chance(0.5) ? 'clear' : 'under-line');
  for (let i = 0; i < tries && self.scene().ended === null; i++) {
    const part = dice.pick(self.scene().parts);
    if (dice.chance(0.3)) yield { act: 'look', part: part.id, aid: dice.pick(aids) };
    else if (dice.chance(0.2)) yield { act: 'call-finding', on: part.id, condition: dice.pick(conditions).id };
    else yield dice.pick(self.offers()).act;
  }
  if (self.scene().ended === null) yield { act: 'hand-over' };
}

/** The careful one without a lapse, from stand to stand as they lie: what a beginner is shown. */
export const carefulRound: Pick<Habit, 'id' | 'does'> = {
  id: 'careful',
  does: (self) => carefully(self, { ...everywhere(self), stands: outside, lapse: 0 }),
};

export const habits: readonly Habit[] = [
  {
    id: 'careful',
    words:
      'Surveys from every side, asks, checks tools, guards, sounds, tests, briefs, puts back by stick what can be, reports, and hands the rest over.',
    spoils: [],
    keeps: [],
    gainsNothingIn: [],
    does: (self) => carefully(self, everywhere(self)),
  },
  {
    id: 'rushes-obvious',
    words: 'Goes straight for the device that everybody sees, then up the pole, and closes the call out.',
    spoils: [
      { part: 'exposure', where: 'a-fatal-cause' },
      { part: 'order', where: 'several-causes' },
      { part: 'control', where: 'a-fuse-to-put-back' },
    ],
    keeps: [],
    gainsNothingIn: [],
    does: rushesObvious,
  },
  {
    id: 'stops-after-first',
    words: 'Ends the search with the first thing found.',
    spoils: [{ part: 'recognition', where: 'several-causes' }],
    keeps: [],
    gainsNothingIn: [],
    does: stopsAfterFirst,
  },
  {
    id: 'never-turns-round',
    words: 'Looks only ahead from where the truck stopped.',
    spoils: [{ part: 'recognition', where: 'a-hidden-cause' }],
    keeps: [],
    gainsNothingIn: [],
    does: neverTurnsRound,
  },
  {
    id: 'calls-everything',
    words: 'As careful, and calls everything else as well that could be wrong with whatever it looks at.',
    spoils: [{ part: 'recognition', where: 'a-cause' }],
    keeps: [],
    gainsNothingIn: ['order', 'control', 'exposure', 'service'],
    does: (self) => carefully(self, { ...everywhere(self), calls: 'everything' }),
  },
  {
    id: 'never-tests',
    words: 'Surveys as carefully, then works aloft, or on all that hands and sticks reach, without a test.',
    spoils: [
      { part: 'exposure', where: 'a-fatal-cause-in-reach' },
      { part: 'control', where: 'a-fuse-to-put-back' },
    ],
    keeps: ['recognition'],
    gainsNothingIn: [],
    does: neverTests,
  },
  {
    id: 'over-controls',
    words: 'Careful, and does every check and question over and over, with long waits.',
    spoils: [{ part: 'service', where: 'anywhere' }],
    keeps: ['recognition', 'order', 'control', 'exposure'],
    gainsNothingIn: [],
    does: (self) => carefully(self, everywhere(self), overControl),
  },
  {
    id: 'random',
    words: 'Does whatever is on offer, by the dice.',
    spoils: [{ part: 'recognition', where: 'a-cause' }],
    keeps: [],
    gainsNothingIn: [],
    does: random,
  },
];

/** The habit of that name. */
export const habitOf = (id: HabitId): Habit => {
  const found = habits.find((habit) => habit.id === id);
  if (found === undefined) throw new Error(`no habit ${id}`);
  return found;
};
