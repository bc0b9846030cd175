/** Jobs that end with the place guarded and known, not with a repair. */
import type { JobKind } from '../types.ts';
import { survey, work } from './steps.ts';

export const assessmentJobs: readonly JobKind[] = [
  {
    id: 'survey-and-hand-over',
    name: 'Survey, guard, hand over',
    steps: [
      ...survey,
      work('findings', 'Name what is wrong and what it can do.', 'act:call-finding'),
      work('tell', 'Tell the dispatcher: danger, sources, what stays open.', 'precondition:reported'),
      work('tag', 'Tag what stands open.', 'act:tag'),
      work('hand-over', 'Stay until somebody takes it over.', 'act:hand-over'),
    ],
    limits: 'Never a failure. Who may leave a guarded place differs.',
    source: '29 CFR 1910.269(a)(4); common practice',
  },
];
