/**
 * The members of a World (its clock, its parts, its people …), each kept once and known by a small number, so that a
 * World is a tuple of numbers. A place is a path in a member; what stands there is a number too. A place counts as
 * changeable from the moment on at which two members differ in it, and whoever relied on its being always the same is
 * told (trie.ts), so nothing has to be declared fixed.
 */
import type { Reach } from '../../hazards/types.ts';
import type { World } from '../../world/types.ts';

/** The members that change; what else a World has is fixed for the drill. */
export const memberNames = [
  'clock',
  'site',
  'truck',
  'parts',
  'people',
  'tools',
  'jumpers',
  'covers',
  'guards',
  'orders',
  'knowledge',
  'paper',
  'chance',
  'ended',
] as const;
export type MemberName = (typeof memberNames)[number];
export type Member = World[MemberName] | Reach;

/** Where each member stands in a tuple. */
export const at: Readonly<Record<MemberName, number>> = Object.fromEntries(
  memberNames.map((name, i) => [name, i]),
) as Record<MemberName, number>;

/** Told when a place turns out to change: what it was always before. */
export interface Reader {
  readonly turned: (place: Place, before: number) => void;
}

/** How a place looks at what stands above it: a key of it, all its keys, the whole of it as text, the member's number. */
type Look = 'key' | 'keys' | 'whole' | 'number';

const isObject = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;

const nothing = Symbol('no such place');
const someObject = Symbol('an object');

/** Small numbers for what stands at places; equal values have equal numbers. */
const numbers = new Map<unknown, number>();
const numberOf = (value: unknown): number => {
  const key = isObject(value) ? someObject : value;
  const known = numbers.get(key);
  if (known !== undefined) return known;
  numbers.set(key, numbers.size + 1);
  return numbers.size;
};

export class Place {
  readonly group: Group;
  readonly above: Place | null;
  readonly key: string;
  readonly look: Look;
  readonly children = new Map<string, Place>();
  /** Whoever relies on this place being the same in all members. */
  readonly readers = new Set<Reader>();
  /** What stands here in the first member. */
  readonly first: number;
  /** The run that read it last, and the proxy that run was given, for the first and for the second of its Worlds. */
  readonly readBy: [number, number] = [0, 0];
  readonly givenTo: [number, number] = [0, 0];
  readonly given: [object | null, object | null] = [null, null];
  /** By member; 0 where it is what stands in the first. Null as long as it is that everywhere. */
  others: Int32Array | null = null;

  constructor(group: Group, above: Place | null, key: string, look: Look) {
    this.group = group;
    this.above = above;
    this.key = key;
    this.look = look;
    this.first = this.seenIn(0);
  }

  /** What stands here, by the member's number. */
  in(member: number): number {
    const { others } = this;
    if (others === null) return this.first;
    const other = others[member] as number;
    return other === 0 ? this.first : other;
  }

  /** The thing itself. */
  raw(member: Member): unknown {
    if (this.above === null) return member;
    const holder = this.above.raw(member);
    if (this.look !== 'key') return holder;
    return isObject(holder) && Object.hasOwn(holder, this.key) ? holder[this.key] : nothing;
  }

  /** The number of what a member has here. */
  private seenIn(number: number): number {
    if (this.look === 'number') return number + 1;
    return this.seen(this.raw(this.group.members[number] as Member));
  }

  /** The number of what stands here, given what is to be looked at. */
  seen(thing: unknown): number {
    if (this.look === 'keys') return numberOf(isObject(thing) ? `keys ${Object.keys(thing).join(' ')}` : nothing);
    if (this.look === 'whole') return numberOf(`whole ${JSON.stringify(thing)}`);
    return numberOf(thing);
  }

  /** Notes what the member has here. */
  note(member: number, value: number): void {
    if (value === this.first) return;
    if (this.others === null || member >= this.others.length) {
      const longer = new Int32Array(Math.max(64, this.group.room));
      if (this.others !== null) longer.set(this.others);
      const turns = this.others === null;
      this.others = longer;
      if (turns) this.turn();
    }
    this.others[member] = value;
  }

  private turn(): void {
    const readers = [...this.readers];
    this.readers.clear();
    for (const reader of readers) reader.turned(this, this.first);
  }

  /** The place by a key, or by another look at this one. */
  child(key: string, look: Look = 'key'): Place {
    const name = look === 'key' ? key : `#${look}`;
    const known = this.children.get(name);
    if (known !== undefined) return known;
    const made = new Place(this.group, this, key, look);
    this.children.set(name, made);
    this.group.catchUp(made);
    return made;
  }
}

/** One member of the World, or a reach into it, in all the forms that were met. */
export class Group {
  readonly members: Member[] = [];
  readonly root: Place;
  /** The member's number as a place. */
  readonly number: Place;
  private readonly ids = new Map<string, number>();
  private readonly pieces: object[] = [];
  private readonly pieceTexts = new Map<string, number>();
  private readonly pieceNumbers = new WeakMap<object, number>();
  private readonly known = new WeakMap<object, number>();
  /** Members for which there is room in the places. */
  room = 64;

  constructor(first: Member) {
    this.members.push(first);
    this.ids.set(this.textOf(first), 0);
    this.keepPieces(first);
    if (isObject(first)) this.known.set(first, 0);
    this.root = new Place(this, null, '', 'key');
    this.number = new Place(this, this.root, '', 'number');
  }

  private textOf(member: Member): string {
    if (!Array.isArray(member)) return JSON.stringify(member);
    return member.map((each: unknown) => (isObject(each) ? `#${this.pieceNumber(each)}` : JSON.stringify(each))).join();
  }

  private pieceNumber(piece: object): number {
    const known = this.pieceNumbers.get(piece);
    if (known !== undefined) return known;
    const text = JSON.stringify(piece);
    let number = this.pieceTexts.get(text);
    if (number === undefined) {
      number = this.pieces.length;
      this.pieces.push(piece);
      this.pieceTexts.set(text, number);
    }
    this.pieceNumbers.set(piece, number);
    return number;
  }

  /** The same list of pieces that were met before, so that what the engine keeps with them is found again. */
  private keepPieces(member: Member): Member {
    if (!Array.isArray(member)) return member;
    const list = member as readonly unknown[];
    const kept = list.map((piece) => (isObject(piece) ? this.pieces[this.pieceNumber(piece)] : piece));
    return kept.every((piece, i) => piece === list[i]) ? member : (kept as unknown as Member);
  }

  /** The number of a member. */
  numberOf(member: Member): number {
    const quick = isObject(member) ? this.known.get(member) : undefined;
    if (quick !== undefined) return quick;
    const text = this.textOf(member);
    let number = this.ids.get(text);
    if (number === undefined) {
      number = this.members.length;
      const kept = this.keepPieces(member);
      this.members.push(kept);
      this.ids.set(text, number);
      if (isObject(kept)) this.known.set(kept, number);
      this.grow(number);
      this.number.note(number, number + 1);
      this.look(this.root, kept, this.members[0], number);
    }
    if (isObject(member)) this.known.set(member, number);
    return number;
  }

  private grow(number: number): void {
    if (number < this.room) return;
    while (number >= this.room) this.room *= 2;
    const widen = (place: Place): void => {
      if (place.others !== null) {
        const longer = new Int32Array(this.room);
        longer.set(place.others);
        place.others = longer;
      }
      for (const child of place.children.values()) widen(child);
    };
    widen(this.root);
    widen(this.number);
  }

  /** Notes all places in which a new member differs from the first; what is the same object cannot differ. */
  private look(place: Place, thing: unknown, first: unknown, member: number): void {
    if (thing === first) return;
    place.note(member, place.seen(thing));
    for (const child of place.children.values()) {
      if (child.look !== 'key') child.note(member, child.seen(thing));
      else this.look(child, under(thing, child.key), under(first, child.key), member);
    }
  }

  /** A place that nobody had asked about yet: what stands there in the members met so far. */
  catchUp(place: Place): void {
    const first = this.members[0] as Member;
    const above = place.above as Place;
    const base = above.raw(first);
    for (let number = 1; number < this.members.length; number++) {
      const holder = above.raw(this.members[number] as Member);
      if (holder === base) continue;
      place.note(number, place.seen(place.look === 'key' ? under(holder, place.key) : holder));
    }
  }
}

const under = (thing: unknown, key: string): unknown =>
  isObject(thing) && Object.hasOwn(thing, key) ? thing[key] : nothing;
