/** Faults of tools. */
import type { FaultKind } from '../types.ts';
import { none } from './none.ts';

const detectorFails: FaultKind = {
  ...none,
  id: 'detector-fails-self-test',
  name: 'detector that fails its self-test',
  on: ['tool:detector'],
  signs: [
    {
      id: 'silent',
      sense: 'test',
      by: 'self-test',
      words: 'Button pressed: no tone, no lamp.',
      source: 'common practice',
    },
  ],
  conditions: ['fails-self-test', 'damaged'],
  severity: 'fatal',
  mechanisms: ['barrier-loss'],
  harm: 'It shows nothing on a line that is alive.',
  controls: ['reject-tool'],
  tempting: [{ what: 'Trust the one reading it gave', why: 'silence is what a dead detector says too' }],
  tellApart: 'A good one sounds and lights on its self-test, before and after each use.',
  source: '29 CFR 1910.333(b)(2)(iv)(B)',
};

const stickOverdue: FaultKind = {
  ...none,
  id: 'stick-test-overdue',
  name: 'live-line tool past its test date',
  on: ['tool:stick'],
  signs: [
    {
      id: 'date',
      sense: 'read',
      by: 'read-tag',
      words: 'Test date on the tag, to be compared with today.',
      source: 'common practice',
    },
  ],
  conditions: ['out-of-test'],
  severity: 'fatal',
  mechanisms: ['barrier-loss'],
  harm: 'Nobody knows what it holds back.',
  controls: ['reject-tool'],
  tempting: [{ what: 'Use it because it looks clean', why: 'moisture inside does not show' }],
  tellApart: 'A tool in date bears a tag not older than two years.',
  source: '29 CFR 1910.269(j)(2)(iii)',
};

export const equipmentFaults = [detectorFails, stickOverdue];
