/** What a line worker calls each bare end of a kind, ready for 'the … of the fused cutout'; common practice. */

const ends = { a: 'source end', b: 'load end' };
const bushings = {
  h1: 'primary bushing',
  h2: 'second primary bushing',
  tank: 'tank',
  x1: 'secondary bushing X1',
  x2: 'secondary bushing X2',
  x3: 'secondary bushing X3',
};

const names: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'pin-insulator': { conductor: 'conductor in the groove', pin: 'pin' },
  'deadend-insulator': { conductor: 'line-side fitting', yoke: 'pole-side fitting' },
  'neutral-spool': { neutral: 'clamp point' },
  'hot-line-clamp': { line: 'clamp', lead: 'end of the lead' },
  cutout: { top: 'top contact', bottom: 'bottom contact' },
  arrester: { line: 'line terminal', base: 'base of the housing', foot: 'ground terminal' },
  generator: { n: 'frame of the set' },
  'governed-generator': { n: 'frame of the set' },
  'tank-strap': { tank: 'tank end', neutral: 'neutral end' },
  'upper-lead': { tank: 'tank end', upper: 'lower end' },
  'ground-bond': { neutral: 'neutral side', upper: 'equipment lead side', lead: 'pole ground side' },
  'ground-lead': { top: 'upper end', low: 'part in reach from the ground', foot: 'end at the butt' },
  'ground-rod': { rod: 'head' },
  transformer: { ...bushings, x2: 'neutral bushing X2' },
  'transformer-two-bushing': { ...bushings, x2: 'neutral bushing X2' },
  'bank-unit-120': bushings,
  'bank-unit-240': bushings,
  'phase-span': ends,
  'neutral-span': ends,
  'coupled-span': ends,
  'coupled-neutral': ends,
  'secondary-span': { a2: 'neutral at the source end', b2: 'neutral at the load end' },
  'service-drop': { x2: 'neutral at the pole', n: 'neutral at the house' },
  meter: {
    line1: 'first line jaw',
    line2: 'second line jaw',
    load1: 'first load jaw',
    load2: 'second load jaw',
    n: 'neutral lug',
  },
  'post-insulator': { conductor: 'conductor in the saddle', pin: 'foot of the post' },
  'suspension-insulator': { conductor: 'line-side fitting', yoke: 'pole-side fitting' },
  'suspension-string': { conductor: 'clamp at its foot', yoke: 'eye in the arm' },
  'ridge-pin': { pin: 'bracket of the pin' },
  guy: { top: 'strand above the insulator', low: 'strand in reach from the ground' },
  'strain-insulator': { upper: 'eye of the upper strand', lower: 'eye of the lower strand' },
  anchor: { rod: 'eye of the rod' },
  'deadend-shoe': { conductor: 'clamp' },
  stirrup: { line: 'grip on the conductor', loop: 'bail under it' },
  'split-bolt': { a: 'first wire', b: 'second wire' },
  capacitor: { line: 'line side of the switch', can: 'bushing of the can', case: 'case and bracket' },
  regulator: { source: 'source bushing', load: 'load bushing', tank: 'tank' },
  disconnect: { source: 'jaw at the source', load: 'hinge at the load' },
  'secondary-rack': { x1: 'upper wire', x2: 'neutral wire', x3: 'lower wire', rack: 'back of the rack' },
  streetlight: { bracket: 'foot of the bracket' },
  'telecom-cable': { a: 'strand at the source end', b: 'strand at the load end' },
  'telecom-enclosure': { case: 'steel of the cabinet' },
  'crossing-line': { a: 'far end beyond the road', b: 'far end beyond the field' },
  recloser: { source: 'source bushing', load: 'load bushing' },
};

/** Bare metal that a fault has brought within reach. */
const ofFaults: Readonly<Record<string, string>> = {
  'tip-a': 'free end at the source end',
  'tip-b': 'free end at the load end',
  'down-a': 'piece on the ground at the source end',
  'down-b': 'piece on the ground at the load end',
  limb: 'limb in reach',
  string: 'string in reach',
  bare: 'bare place in reach',
  low: 'conductor in reach',
};

/** Name of a terminal with bare metal; the terminal's own word where the trade has none for it. */
export const pointName = (kind: string, terminal: string): string =>
  names[kind]?.[terminal] ?? ofFaults[terminal] ?? terminal;
