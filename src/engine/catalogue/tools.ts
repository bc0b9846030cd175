/** Tools and protective equipment. Ratings that a scenario gives win over these defaults. */
import type { ToolKind } from './types.ts';

export const toolKinds: readonly ToolKind[] = [
  {
    id: 'detector',
    name: 'voltage detector',
    testsOf: 'primary',
    thresholdVolts: 600, // estimate; makers set theirs, the label counts
    ratedVolts: 15000,
    checks: ['read-tag', 'inspect', 'self-test'],
    source: '29 CFR 1910.333(b)(2)(iv)(B)',
  },
  {
    id: 'low-voltage-tester',
    name: 'low-voltage tester',
    testsOf: 'secondary',
    ratedVolts: 600,
    checks: ['read-tag', 'inspect', 'self-test'],
    source: '29 CFR 1910.333(b)(2)(iv)(B)',
  },
  {
    id: 'stick',
    name: 'extension stick',
    barrier: 'stick',
    ratedVolts: 100000,
    testMonths: 24,
    reachM: 11,
    checks: ['read-tag', 'inspect', 'wipe'],
    source: '29 CFR 1910.269(j)',
  },
  {
    id: 'rubber-gloves',
    name: 'rubber gloves with leather protectors',
    barrier: 'gloves',
    ratedVolts: 17000,
    testMonths: 6,
    wornOn: 'hands',
    checks: ['read-tag', 'inspect', 'air-test'],
    source: '29 CFR 1910.137(c)',
  },
  {
    id: 'face-shield',
    name: 'arc-rated face shield',
    wornOn: 'face',
    checks: ['inspect'],
    source: '29 CFR 1910.269(l)(8)',
  },
  {
    id: 'ground-set',
    name: 'ground set',
    clamps: 3,
    cable: '1/0',
    checks: ['inspect'],
    source: '29 CFR 1910.269(n)(4); ASTM F855',
  },
  {
    id: 'large-ground-set',
    name: 'large ground set',
    clamps: 3,
    cable: '4/0',
    checks: ['inspect'],
    source: '29 CFR 1910.269(n)(4); ASTM F855',
  },
  {
    id: 'cluster-bar',
    name: 'grounding cluster bar with its jumper',
    clamps: 4,
    cable: '2/0',
    checks: ['inspect'],
    source: '29 CFR 1910.269(n)(3); common practice',
  },
  {
    id: 'clamp-stick',
    name: 'hot-line clamp stick',
    barrier: 'stick',
    ratedVolts: 100000,
    testMonths: 24,
    reachM: 2.4,
    checks: ['read-tag', 'inspect', 'wipe'],
    source: '29 CFR 1910.269(j)',
  },
  {
    id: 'sleeves',
    name: 'rubber sleeves',
    ratedVolts: 17000,
    testMonths: 12,
    wornOn: 'arms',
    checks: ['read-tag', 'inspect'],
    source: '29 CFR 1910.137(c), 1910.269(l)(4)(i)',
  },
  {
    id: 'rubber-blanket',
    name: 'rubber blanket',
    barrier: 'cover',
    ratedVolts: 17000,
    testMonths: 12,
    checks: ['read-tag', 'inspect'],
    source: '29 CFR 1910.137 Table I-5',
  },
  { id: 'hard-hat', name: 'hard hat', wornOn: 'head', checks: ['inspect'], source: '29 CFR 1910.135' },
  { id: 'vest', name: 'high-visibility vest', wornOn: 'vest', checks: ['inspect'], source: 'MUTCD, from memory' },
  {
    id: 'fall-arrest',
    name: 'harness and lanyard',
    wornOn: 'body',
    checks: ['inspect'],
    source: '29 CFR 1910.140, 1910.269(g)(2)(iv)(C)',
  },
  {
    id: 'barrier-vehicle',
    name: 'barrier vehicle with arrow board',
    guards: 'barrier',
    checks: ['inspect'],
    source: '29 CFR 1910.269(w)(6); MUTCD, from memory',
  },
  {
    id: 'truck-ground',
    name: 'ground reel of the truck',
    guards: 'truck-ground',
    checks: ['inspect'],
    source: '29 CFR 1910.269(p)(4)(iii)',
  },
  { id: 'bond-jumper', name: 'bonding jumper', clamps: 2, checks: ['inspect'], source: 'common practice' },
  {
    id: 'secondary-short',
    name: 'secondary short',
    clamps: 3,
    fits: ['x2', 'x1', 'x3'],
    checks: ['inspect'],
    source: 'common practice',
  },
  {
    id: 'line-hose',
    name: 'line hose',
    barrier: 'cover',
    ratedVolts: 17000,
    checks: ['read-tag', 'inspect'],
    source: '29 CFR 1910.137',
  },
  {
    id: 'insulator-cover',
    name: 'insulator hood',
    barrier: 'cover',
    ratedVolts: 17000,
    checks: ['read-tag', 'inspect'],
    source: '29 CFR 1910.137',
  },
  {
    id: 'auxiliary-arm',
    name: 'auxiliary arm',
    supports: true,
    testMonths: 24,
    checks: ['read-tag', 'inspect'],
    source: '29 CFR 1910.269(j)',
  },
  {
    id: 'bucket',
    name: 'insulated bucket',
    ratedVolts: 46000,
    lifts: 'bucket',
    checks: ['inspect'],
    source: '29 CFR 1910.67',
  },
  {
    id: 'climbing-set',
    name: 'hooks, belt and fall restraint',
    lifts: 'hooks',
    wornOn: 'body',
    checks: ['inspect'],
    source: '29 CFR 1910.269(g)(2)',
  },
  { id: 'hammer', name: 'sounding hammer', testsPole: 'sound', checks: [], source: '29 CFR 1910.269 App. D' },
  { id: 'prod', name: 'pole prod', testsPole: 'prod', checks: [], source: '29 CFR 1910.269 App. D' },
  { id: 'meter-blank', name: 'meter blank and seals', checks: [], source: 'common practice' },
  { id: 'tags', name: 'tags', checks: [], source: '29 CFR 1910.269(m)' },
  { id: 'spares', name: 'spare parts', checks: [], source: 'common practice' },
];

const byId = new Map(toolKinds.map((kind) => [kind.id, kind]));

export const isToolKind = (id: string): boolean => byId.has(id);

/** The kind; throws on an unknown id, which a checked scenario cannot bring. */
export const toolKind = (id: string): ToolKind => {
  const kind = byId.get(id);
  if (kind === undefined) throw new Error(`no tool kind ${id}`);
  return kind;
};
