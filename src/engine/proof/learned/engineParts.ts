/** The parts of the engine's step, each learned as a function of what it reads. */
import { minutesOf, refusalOf } from '../../acts/act.ts';
import { passMinutes } from '../../acts/clock.ts';
import { fallBy } from '../../acts/falling.ts';
import { flashOver } from '../../acts/flashover.ts';
import type { Offer } from '../../acts/kind.ts';
import { kindOf, kinds } from '../../acts/kinds.ts';
import { hear } from '../../acts/perceive.ts';
import { standing } from '../../acts/presence.ts';
import type { Act, ActName } from '../../acts/types.ts';
import { settle } from '../../circuit/settle.ts';
import type { Reach } from '../../hazards/types.ts';
import { trainee } from '../../world/edit.ts';
import type { World } from '../../world/types.ts';
import { Book, kept } from './books.ts';
import { EffectBook, type Effects } from './effects.ts';
import { type Learner, nothingWhole, wholeParts } from './learner.ts';
import type { Group } from './members.ts';
import { Trie } from './trie.ts';
import type { Tuple } from './tuples.ts';

/** What judges a reach: plain data a meeting, `strikes` among it. */
export type Judge = (
  reach: Reach,
  before: World,
  after: World,
) => readonly { readonly hazard: string; readonly strikes: boolean }[];

/** What came of a reach, kept once. */
export interface Judged {
  readonly meetings: ReturnType<Judge>;
  readonly strikes: boolean;
}

interface Applied {
  readonly effects: Effects;
  readonly reach: readonly number[];
}

/** Acts whose change is worked out on a circuit: they read the parts as one. */
const onCircuit = new Set<ActName>([
  'test',
  'ask',
  'tell',
  'listen',
  'look',
  'touch',
  'order',
  'count-grounds',
  'owner',
  'ground',
  'unground',
]);

const unjudged: Judged = { meetings: [], strikes: false };

export class EngineParts {
  readonly acts: Act[] = [];
  private readonly learner: Learner;
  private readonly groups: readonly Group[];
  private readonly judge: Judge | null;
  private readonly effects: EffectBook;
  private readonly actNumbers = new Map<string, number>();
  private readonly reaches = new Book<Reach>();
  private readonly judgements = new Book<Judged>();
  private readonly offers = new Map<ActName, Trie<readonly number[]>>();
  /** By act. */
  private readonly begins: Trie<number>[] = [];
  private readonly applies: Trie<Applied>[] = [];
  /** By minutes. */
  private readonly passes: Trie<Effects>[] = [];
  private readonly flashes: Trie<Effects>[] = [];
  private readonly settles = new Trie<Effects>();
  private readonly notices = new Trie<Effects>();
  /** By reach. */
  private readonly judges: Trie<number>[] = [];

  constructor(learner: Learner, judge: Judge | null) {
    this.learner = learner;
    this.groups = learner.groups;
    this.judge = judge;
    this.effects = new EffectBook(learner.groups);
  }

  /** The number of an act. */
  numberOf(act: Act): number {
    return kept(this.actNumbers, JSON.stringify(act), () => {
      this.acts.push(act);
      this.begins.push(new Trie());
      this.applies.push(new Trie());
      return this.acts.length - 1;
    });
  }

  reachOf(number: number): Reach {
    return this.reaches.things[number] as Reach;
  }

  /** Acts of a kind on offer, those that are refused among them. */
  offering(tuple: ArrayLike<number>, name: ActName): readonly number[] {
    const trie = kept(this.offers, name, () => new Trie<readonly number[]>());
    const whole = name === 'ground' || name === 'unground' ? wholeParts : nothingWhole;
    return (
      trie.find(tuple) ??
      this.learner.learn(trie, tuple, whole, (world, run) => {
        const offers = kinds[name].offers(world) as readonly Offer<ActName>[];
        return offers.map(({ act }) => this.numberOf(run.bare(act) as Act));
      })
    );
  }

  /** Minutes that the act takes; -1 where it is impossible. */
  minutes(tuple: ArrayLike<number>, act: number): number {
    const trie = this.begins[act] as Trie<number>;
    const intent = this.acts[act] as Act;
    return (
      trie.find(tuple) ??
      this.learner.learn(trie, tuple, nothingWhole, (world) =>
        refusalOf(world, intent) === null ? minutesOf(world, intent) : -1,
      )
    );
  }

  /** What the minutes bring. */
  passing(tuple: Tuple, minutes: number): Effects {
    const trie = this.passes[minutes] ?? new Trie<Effects>();
    this.passes[minutes] = trie;
    return (
      trie.find(tuple) ??
      this.learner.learn(trie, tuple, nothingWhole, (world, run) =>
        this.effects.of(run.changes(this.groups, tuple, passMinutes(world, minutes).world)),
      )
    );
  }

  /** What the act does, and what falls by it. */
  applying(tuple: Tuple, act: number, minutes: number): Applied {
    const trie = this.applies[act] as Trie<Applied>;
    const intent = this.acts[act] as Act;
    const known = trie.find(tuple);
    if (known !== undefined) return known;
    const whole = onCircuit.has(intent.act) ? wholeParts : nothingWhole;
    return this.learner.learn(trie, tuple, whole, (world, run) => {
      const done = kindOf(intent.act).apply(world, intent);
      const stays = done.reach.length > 0 || minutes === 0 || trainee(done.world).at === null;
      const reach = stays ? done.reach : [standing(done.world, minutes * 60)];
      const fallen = fallBy(done.world, intent).world;
      return {
        reach: reach.map((each) => this.reaches.numberOf(run.bare(each) as Reach)),
        effects: this.effects.of(run.changes(this.groups, tuple, fallen)),
      };
    });
  }

  /** What the circuit does by itself. */
  settling(tuple: Tuple): Effects {
    return (
      this.settles.find(tuple) ??
      this.learner.learn(this.settles, tuple, wholeParts, (world, run) =>
        this.effects.of(run.changes(this.groups, tuple, settle(world).world)),
      )
    );
  }

  /** What leaks over after so many minutes. */
  flashing(tuple: Tuple, minutes: number): Effects {
    const trie = this.flashes[minutes] ?? new Trie<Effects>();
    this.flashes[minutes] = trie;
    return (
      trie.find(tuple) ??
      this.learner.learn(trie, tuple, wholeParts, (world, run) =>
        this.effects.of(run.changes(this.groups, tuple, flashOver(world, minutes).world)),
      )
    );
  }

  /** What the reach met between two Worlds, one after the other in the pair. */
  judging(pair: Tuple, reach: number): Judged {
    const trie = this.judges[reach] ?? new Trie<number>();
    this.judges[reach] = trie;
    const { judge } = this;
    if (judge === null) return unjudged;
    const number =
      trie.find(pair) ??
      this.learner.learnTwo(trie, pair, (before, after, run) => {
        const meetings = run.bare(judge(this.reachOf(reach), before, after)) as ReturnType<Judge>;
        return this.judgements.numberOf({ meetings, strikes: meetings.some(({ strikes }) => strikes) });
      });
    return this.judgements.things[number] as Judged;
  }

  /** What is noticed unasked; what it was before decides only how that is told (acts/perceive.ts). */
  noticing(tuple: Tuple): Effects {
    return (
      this.notices.find(tuple) ??
      this.learner.learn(this.notices, tuple, wholeParts, (world, run) =>
        this.effects.of(run.changes(this.groups, tuple, hear(world, 'loud').world)),
      )
    );
  }
}
