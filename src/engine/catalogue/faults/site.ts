/** Faults of the site: weather, water, ice. Limits and speeds are common practice or estimates where no source is named. */
import type { FaultKind, SignKind } from '../types.ts';
import { none } from './none.ts';

const onSite = { ...none, on: ['site'], severity: 'fatal', source: 'common practice' } as const;

const seen = (id: string, words: string): SignKind => ({ id, sense: 'see', words, source: 'common practice' });

export const siteFaults: readonly FaultKind[] = [
  {
    ...onSite,
    id: 'lightning-near',
    name: 'thunderstorm near',
    signs: [seen('sky', 'sky: dark from one side, flashes in it, thunder a few seconds behind')],
    conditions: ['lightning'],
    site: { lightning: 'near' },
    mechanisms: ['lightning'],
    harm: 'A stroke comes along the line from miles off to whoever has hands on it; grounds do not hold it.',
    controls: ['postpone-lightning'],
    tempting: [{ what: 'Finish quickly before it is overhead', why: 'the line brings it before the sky does' }],
    tellApart: 'Thunder tells how far: about five seconds a mile; blasting and guns have no flash in the sky.',
    source: 'OSHA/NOAA fact sheet on lightning at work: 30 minutes after the last thunder',
  },
  {
    ...onSite,
    id: 'wind-over-limit',
    name: 'wind above the limit for going aloft',
    signs: [seen('wind', 'wind: whole trees move, it is hard to walk against, wires swing and slap')],
    conditions: ['wind-too-strong'],
    site: { windMs: '=wind' },
    values: { wind: { default: 18, dimension: 'speed', doc: 'Steady wind' } },
    mechanisms: ['fall'],
    harm: 'The lift sways beyond its limit, a climber is pushed off, what is held swings away.',
    controls: ['postpone-weather'],
    tempting: [{ what: 'Go up on the lee side', why: 'gusts have no lee' }],
    tellApart: 'Small branches move in a fresh breeze; whole trees in a gale.',
    source: '29 CFR 1910.67; Beaufort scale; common practice',
  },
  {
    ...onSite,
    id: 'flooded-ground',
    name: 'water standing round the pole',
    signs: [seen('water', 'ground: water over the grass round the pole and along the ditch, still and dark')],
    conditions: ['flooded'],
    site: { flooded: true },
    mechanisms: ['contact'],
    harm: 'A ground that is alive reaches through the water to whoever stands in it.',
    controls: ['stand-dry', 'deenergize-ground', 'keep-clear'],
    tempting: [{ what: 'Wade in rubber boots', why: 'boots are no rated insulation' }],
    tellApart: 'A puddle ends before the ground lead; standing water joins everything in it.',
    source: '29 CFR 1910.269 App. C; common practice',
  },
  {
    ...onSite,
    id: 'pole-iced',
    name: 'ice on poles and wires',
    signs: [seen('ice', 'ice: a clear skin on poles, wires and twigs, cracking when they move')],
    conditions: ['iced'],
    site: { precipitation: 'ice' },
    mechanisms: ['fall'],
    harm: 'Gaffs do not hold in an iced pole.',
    controls: ['use-lift', 'postpone-weather'],
    tempting: [{ what: 'Climb on the side without ice', why: 'it turns with every step' }],
    tellApart: 'Frost is white and rough; clear ice shines and cracks.',
    source: '29 CFR 1910.269(q)(1); common practice',
  },
];
