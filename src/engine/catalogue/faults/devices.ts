/** Faults of cutouts and arresters. A hung tube leads a little over its charred bore; a failed arrester is a short. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const mark = { shape: 'patch', contrast: 0.6, reflectance: 0.3, source: 'estimate' } as const;

const arresterShort: FaultKind = {
  ...none,
  id: 'arrester-failed-short',
  name: 'arrester failed short',
  on: ['arrester'],
  signs: [
    {
      ...mark,
      id: 'side',
      sense: 'see',
      form: 'outline',
      feature: 'housing',
      words: 'housing: grey sheds, one side black and open from top to foot',
      size: 0.02,
      extent: 0.25,
    },
  ],
  conditions: ['failed'],
  leaks: [{ name: 'short', from: 'line', to: 'foot', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: {
    ohms: { default: 1, dimension: 'resistance', doc: 'What is left of the blocks' },
    credibleOhms: { default: 0.5, dimension: 'resistance', doc: 'The same, welded' },
  },
  severity: 'fatal',
  mechanisms: ['flash', 'contact'],
  harm: 'Closing in behind it closes into a fault, and it may burst.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Fit a link and try', why: 'the same fault is there again, beside the face' }],
  tellApart: 'A sound arrester has whole sheds and its foot in place.',
  source: 'common practice',
};

const disconnectorOperated: FaultKind = {
  ...none,
  id: 'arrester-disconnector-operated',
  name: 'arrester with its disconnector operated',
  on: ['arrester'],
  signs: [
    {
      ...mark,
      id: 'lead',
      sense: 'see',
      form: 'outline',
      place: [0, 0.02, -0.15],
      feature: 'disconnector',
      words: 'foot: no black piece on it, the lead hanging a hand below',
      size: 0.02,
      extent: 0.2,
    },
  ],
  conditions: ['disconnector-operated'],
  opens: ['disconnector'],
  leaks: [{ name: 'blocks-gone', from: 'line', to: 'base', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: {
    ohms: { default: 20, dimension: 'resistance', doc: 'What is left of the blocks' },
    credibleOhms: { default: 1, dimension: 'resistance', doc: 'The same, welded' },
  },
  severity: 'fatal',
  mechanisms: ['contact'],
  harm: 'The foot of the arrester stands at line voltage, and the transformer has lost its protection.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Put the lead back by hand', why: 'it ends beside metal at line voltage' }],
  tellApart: 'A sound one has its black piece at the foot and the lead bolted to it.',
  source: 'common practice',
};

const tubeHung: FaultKind = {
  ...none,
  id: 'fuse-tube-hung',
  name: 'fuse tube hung up',
  on: ['cutout'],
  signs: [
    {
      ...mark,
      id: 'leader',
      sense: 'see',
      form: 'outline',
      feature: 'tube',
      words: 'tube: in the upper contact, black below, no leader out of it',
      size: 0.02,
      extent: 0.1,
    },
  ],
  conditions: ['hung-up', 'fuse-operated'],
  sets: { position: 'closed', link: 'blown' },
  leaks: [{ name: 'bore', from: 'top', to: 'bottom', ohms: 'ohms', credibleOhms: 'credibleOhms' }],
  values: {
    ohms: { default: 300e3, dimension: 'resistance', doc: 'Charred bore of the tube' },
    credibleOhms: { default: 50, dimension: 'resistance', doc: 'The same when it flashes' },
  },
  // Tube with its fittings: order of magnitude, estimate.
  mechanical: { drops: { what: 'the tube', kilograms: 1.5 } },
  severity: 'fatal',
  mechanisms: ['contact', 'flash', 'struck-by'],
  harm: 'It looks closed and holds no load; its charred bore keeps the load side alive through the tube.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [
    { what: 'Take it for closed and the transformer for bad', why: 'the link is gone and the tube did not fall' },
  ],
  tellApart: 'A closed tube shows its leader, drawn tight at the lower end.',
  source: 'common practice',
};

const linkOversize: FaultKind = {
  ...none,
  id: 'link-oversize',
  name: 'link too large',
  on: ['cutout'],
  signs: [
    {
      id: 'record',
      sense: 'ask',
      by: 'links',
      words: 'The record says: 65 K fitted here after the last outage, nothing smaller was on the truck.',
      source: 'common practice',
    },
  ],
  conditions: ['oversize-link'],
  words: { link: '65K' },
  severity: 'serious',
  mechanisms: ['flash', 'contact'],
  harm: 'A fault behind it burns on until something farther back operates.',
  controls: ['deenergize-ground', 'isolate-source', 'keep-clear'],
  tempting: [{ what: 'Leave it because it holds', why: 'holding is what it does wrong' }],
  tellApart: 'The link is stamped with its size; the transformer decides what it should be.',
  source: 'common practice',
};

export const deviceFaults = [arresterShort, disconnectorOperated, tubeHung, linkOversize];
