/** The job briefing as one printed sheet: what was found, what it can do, what is done about it, five subjects, signatures. */
import { briefingTopics, controlKind } from '../../engine/catalogue/controls.ts';
import { caution } from '../../engine/debrief/caution.ts';
import { subjectWords, underSubjects } from '../../engine/debrief/subjects.ts';
import type { World } from '../../engine/world/types.ts';
import { capital, clockAt, conditionLabel, nameOf } from '../words.ts';
import { harmWords } from './briefingWords.ts';

/** On paper nobody is 'you'. */
const worker = (world: World, id: string): string => (id === 'trainee' ? 'first worker' : nameOf(world, id));

const Row = ({ world, finding }: { world: World; finding: World['paper']['findings'][number] | null }) => {
  const plans = world.paper.plans.filter((plan) => plan.finding === (finding?.id ?? null));
  const harms = [...new Set(plans.flatMap(({ harm }) => (harm === undefined ? [] : [harmWords[harm]])))];
  if (finding === null && plans.length === 0) return null;
  return (
    <tr>
      <td>
        {finding === null
          ? 'The whole job'
          : capital(`${nameOf(world, finding.on)}: ${conditionLabel(finding.condition)}`)}
      </td>
      <td>{capital(harms.join(', '))}</td>
      <td>{plans.map(({ control }) => controlKind(control).name).join('; ')}</td>
      <td>{[...new Set(plans.map(({ by }) => worker(world, by)))].join(', ')}</td>
    </tr>
  );
};

/** Lines for names by hand; a crew is seldom larger, and the sheet stays one page. */
const signatures = 4;
/** Empty rows for what is found on the way. */
const spare = 2;

export const BriefingSheet = ({ world }: { world: World }) => {
  const { findings, briefings } = world.paper;
  const last = briefings.at(-1);
  const under = underSubjects(world);
  const { call, job } = world.given;
  return (
    <article class="briefing-sheet">
      <header>
        <h1>Job briefing</h1>
        <p>
          {world.given.title}, {call.place}. {call.date}, {clockAt(world, world.clock.minute)}.
        </p>
        <p>{job.words}</p>
      </header>
      <table>
        <thead>
          <tr>
            <th scope="col">Hazard found</th>
            <th scope="col">What it can do</th>
            <th scope="col">What will be done</th>
            <th scope="col">By</th>
          </tr>
        </thead>
        <tbody>
          {findings.map((finding) => (
            <Row key={finding.id} world={world} finding={finding} />
          ))}
          <Row world={world} finding={null} />
          {Array.from({ length: spare }, (_, index) => (
            <tr key={index}>
              <td>&nbsp;</td>
              <td />
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      <ul class="subjects">
        {briefingTopics.map((topic, index) => (
          <li key={topic}>
            <span class="box">{last?.topics.includes(topic) ? 'x' : ''}</span> {index + 1}. {subjectWords[topic]}
            {topic !== 'hazards' && <span class="under">{under[topic].join('; ')}</span>}
          </li>
        ))}
        <li>
          <span class="box">{last?.rescue ? 'x' : ''}</span> Rescue from aloft is ready
        </li>
      </ul>
      <p>
        {last === undefined
          ? 'Not yet gone through with the crew.'
          : `Gone through at ${clockAt(world, last.minute)} with: ${last.heard.map((id) => worker(world, id)).join(', ')}.`}{' '}
        Brief again when anything changes.
      </p>
      <div class="signatures">
        {Array.from({ length: signatures }, (_, index) => (
          <p key={index}>
            <span>Name</span>
            <span>Signature</span>
            <span>Time</span>
          </p>
        ))}
      </div>
      <footer>
        {caution} The five subjects: 29 CFR 1910.269(c)(2); what else a briefing needs differs from place to place.
      </footer>
    </article>
  );
};
