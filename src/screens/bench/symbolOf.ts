/**
 * Which graphical symbol stands for a branch, and the few words beside it. Kinds that have a symbol of their own are listed
 * with it; any other kind is drawn by what its branch is electrically, so that a new kind needs no entry here.
 */
import { componentKind } from '../../engine/catalogue/components.ts';
import type { Branch } from '../../engine/catalogue/types.ts';
import type { Part } from '../../engine/world/types.ts';

/** What each is drawn after: symbolSources.ts. */
export const symbols = [
  'system',
  'set',
  'inverter',
  'battery',
  'disconnector',
  'fuse-switch',
  'breaker',
  'recloser',
  'switch',
  'meter',
  'arrester',
  'load',
  'electrode',
  'ladder',
  'line',
  'primary',
  'secondary',
  'regulator',
  'leak',
  'gap',
  'impedance',
  'capacitor',
] as const;
export type SymbolName = (typeof symbols)[number];

interface Own {
  readonly symbol?: SymbolName;
  /** Symbols of branches that differ from what they are electrically. */
  readonly as?: Readonly<Record<string, SymbolName>>;
  readonly word: string;
  /** Word of the part whose text stands after it: the fuse link. */
  readonly and?: string;
  /** Words for one of its branches. */
  readonly at?: Readonly<Record<string, string>>;
}

const own: Readonly<Record<string, Own>> = {
  cutout: { symbol: 'fuse-switch', word: 'cutout', and: 'link' },
  'hot-line-clamp': { symbol: 'disconnector', word: 'clamp' },
  arrester: { symbol: 'arrester', word: 'arrester' },
  meter: { symbol: 'meter', word: 'meter' },
  'main-breaker': { word: 'main' },
  'household-load': { symbol: 'load', word: 'load' },
  'panel-cord': { word: 'cable' },
  'transfer-switch': { word: 'transfer', at: { 'line-1': 'to line', 'set-1': 'to set' } },
  'service-drop': { word: 'drop', at: { messenger: 'neutral' } },
  'system-source': { word: 'system' },
  'system-source-wye': { word: 'system', at: { return: 'return' } },
  'system-source-delta': { word: 'system' },
  'photovoltaic-plant': { as: { output: 'inverter', inverter: 'inverter' }, word: 'inverter' },
  'battery-plant': { as: { output: 'battery', inverter: 'battery' }, word: 'battery' },
  'interlocked-main': { word: 'main', at: { 'inlet-1': 'inlet' } },
  'neutral-transfer-switch': {
    word: 'transfer',
    at: { 'line-1': 'to line', 'set-1': 'to set', 'set-neutral': 'neutral' },
  },
  'bank-unit-120': { word: 'unit' },
  'bank-unit-240': { word: 'unit' },
  'transformer-two-bushing': { word: 'unit' },
  'upstream-recloser': { as: { contacts: 'recloser' }, word: 'recloser' },
  recloser: { as: { contacts: 'recloser' }, word: 'recloser' },
  disconnect: { as: { blade: 'disconnector' }, word: 'disconnect' },
  regulator: {
    as: { core: 'regulator', series: 'regulator', bypass: 'disconnector' },
    word: 'regulator',
    at: { bypass: 'bypass' },
  },
  capacitor: { as: { charge: 'capacitor' }, word: 'capacitor', at: { switch: 'switch' } },
  'telecom-enclosure': { as: { inverter: 'inverter' }, word: 'power supply' },
  'other-circuit': { as: { thevenin: 'system' }, word: 'other circuit' },
  'crossing-line': { as: { thevenin: 'system' }, word: 'crossing line' },
  'secondary-span': { word: 'low side' },
  'ground-bond': { word: 'ground bond' },
  'ground-lead': { word: 'ground wire' },
};

/** Shunts smaller than this are stray, wood or healthy leakage and not drawn, siemens (1 kilohm); electrodes always are. */
export const SHOWN_SIEMENS = 1e-3;

const byBranch = (part: Part, branch: Branch, switched: boolean): SymbolName => {
  switch (branch.type) {
    case 'source':
      return branch.group === 'system' ? 'system' : 'set';
    case 'transformer':
      return 'primary';
    case 'series':
      if (branch.protects !== undefined) return branch.protects.curve === 'fuse-link' ? 'fuse-switch' : 'breaker';
      if (branch.between.includes('earth')) return 'ladder';
      return switched ? 'switch' : part.end !== null ? 'line' : 'impedance';
    case 'shunt':
      if (branch.between.includes('earth')) return 'electrode';
      // What takes less than nothing drives: an inverter that follows the line.
      if (branch.y.re < 0) return 'set';
      return branch.y.im > branch.y.re ? 'capacitor' : 'load';
  }
};

/** The symbol of a branch; `switched` when a state of the part opens it. */
export const symbolOf = (part: Part, branch: Branch, switched: boolean): SymbolName =>
  own[part.kind]?.as?.[branch.name] ??
  (branch.type === 'source' ? undefined : own[part.kind]?.symbol) ??
  byBranch(part, branch, switched);

/** Few words for the symbol, in the drawing. */
export const symbolWords = (part: Part, symbol: SymbolName, branch: string): string => {
  const entry = own[part.kind];
  const named = entry?.at?.[branch];
  if (named !== undefined) return named;
  if (symbol === 'gap') return entry?.word ?? componentKind(part.kind).name;
  if (symbol === 'set') return entry?.word ?? 'set';
  if (symbol === 'ladder') return 'grounds beyond';
  if (symbol === 'electrode') return part.premises === null ? 'ground rod' : 'house ground';
  const name = entry?.word ?? componentKind(part.kind).name;
  const more = entry?.and === undefined ? undefined : part.words[entry.and];
  if (symbol === 'breaker' && (entry === undefined || part.kind.endsWith('-plant'))) return 'breaker';
  return more === undefined ? name : `${name} ${more}`;
};
