/** The sheet that a crew fills before work: five subjects, the findings carried over, what will be done about each, by whom. */
import { useState } from 'preact/hooks';
import { briefingTopics, controlKind, controlKinds } from '../../engine/catalogue/controls.ts';
import { type Mechanism, mechanisms } from '../../engine/catalogue/types.ts';
import { subjectWords, underSubjects } from '../../engine/debrief/subjects.ts';
import type { Person, World } from '../../engine/world/types.ts';
import { printSheet } from '../parts/printSheet.ts';
import { focusIfLost } from '../scene/keys.ts';
import type { Desk, Playing } from '../types.ts';
import { capital, clockAt, conditionLabel, nameOf } from '../words.ts';
import { BriefingSheet } from './BriefingSheet.tsx';
import { harmWords } from './briefingWords.ts';

const mayAct = ({ role }: Person): boolean => role !== 'caller';

const AddPlan = ({ playing, finding, about }: { playing: Playing; finding: string | null; about: string }) => {
  const { world } = playing.snapshot.value;
  const [control, setControl] = useState('');
  const [by, setBy] = useState('trainee');
  const [harm, setHarm] = useState<Mechanism | null>(null);
  const add = (event: Event): void => {
    event.preventDefault();
    if (control === '') return;
    playing.send({ act: 'plan', finding, control, by, ...(harm === null ? {} : { harm }) });
    if (playing.snapshot.value.refused === null) setControl('');
  };
  return (
    <form class="add-plan" onSubmit={add}>
      {finding !== null && (
        <label class="can-do">
          <span class="sr-only">What it can do: {about}</span>
          <select
            value={harm ?? ''}
            onChange={({ currentTarget: { value } }) => setHarm(mechanisms.find((each) => each === value) ?? null)}
          >
            <option value="">What it can do …</option>
            {mechanisms.map((each) => (
              <option key={each} value={each}>
                {capital(harmWords[each])}
              </option>
            ))}
          </select>
        </label>
      )}
      <label class="control">
        <span class="sr-only">Control for {about}</span>
        <select value={control} onChange={(event) => setControl(event.currentTarget.value)}>
          <option value="">What will be done …</option>
          {controlKinds.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label class="by">
        <span class="sr-only">By whom, for {about}</span>
        <select value={by} onChange={(event) => setBy(event.currentTarget.value)}>
          {world.people.filter(mayAct).map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <button type="submit" disabled={control === ''}>
        Add<span class="sr-only"> for {about}</span>
      </button>
    </form>
  );
};

const Plans = ({ playing, finding, about }: { playing: Playing; finding: string | null; about: string }) => {
  const { world } = playing.snapshot.value;
  const plans = world.paper.plans.filter((plan) => plan.finding === finding);
  return (
    <div class="plans">
      {plans.length > 0 && (
        <ul>
          {plans.map((plan) => (
            <li key={plan.id}>
              <span>
                <b>{world.paper.plans.indexOf(plan) + 1}.</b>{' '}
                {plan.harm !== undefined && `Against ${harmWords[plan.harm]}: `}
                {controlKind(plan.control).name}, by {nameOf(world, plan.by)}
              </span>
              <button
                type="button"
                aria-label={`Strike: ${controlKind(plan.control).name}`}
                onClick={() => {
                  playing.send({ act: 'withdraw-plan', plan: plan.id });
                  focusIfLost('page');
                }}
              >
                ✕
              </button>
            </li>
          ))}
        </ul>
      )}
      <AddPlan playing={playing} finding={finding} about={about} />
    </div>
  );
};

const heldWords = (world: World): readonly string[] =>
  world.paper.briefings.map(({ minute, heard, topics, rescue }) => {
    const who = heard.map((id) => nameOf(world, id)).join(' and ');
    return `${clockAt(world, minute)}: ${topics.length} of 5 subjects, heard by ${who}${rescue ? ', rescue ready' : ''}`;
  });

const Hold = ({ playing }: { playing: Playing }) => {
  const [topics, setTopics] = useState<readonly string[]>([]);
  const [rescue, setRescue] = useState(false);
  const under = underSubjects(playing.snapshot.value.world);
  const toggle = (topic: string, on: boolean): void =>
    setTopics(briefingTopics.filter((each) => (each === topic ? on : topics.includes(each))));
  return (
    <form
      class="hold"
      onSubmit={(event) => {
        event.preventDefault();
        playing.send({ act: 'brief', topics, rescue });
      }}
    >
      <fieldset>
        <legend>Gone through with the crew</legend>
        {briefingTopics.map((topic, index) => (
          <label key={topic}>
            <input
              type="checkbox"
              checked={topics.includes(topic)}
              onChange={(event) => toggle(topic, event.currentTarget.checked)}
            />
            <span>
              {index + 1}. {subjectWords[topic]}
              <span class="under">
                {under[topic].length === 0 ? 'nothing on the sheet yet' : under[topic].join('; ')}
              </span>
            </span>
          </label>
        ))}
        <label>
          <input type="checkbox" checked={rescue} onChange={(event) => setRescue(event.currentTarget.checked)} />
          Rescue from aloft is ready
        </label>
      </fieldset>
      <button type="submit" class="primary" disabled={topics.length === 0}>
        Hold the briefing
      </button>
    </form>
  );
};

export const BriefingPage = ({ playing }: { desk: Desk; playing: Playing }) => {
  const { world } = playing.snapshot.value;
  const { findings } = world.paper;
  const held = heldWords(world);
  return (
    <>
      <h2>Job briefing</h2>
      <p class="meta">{world.given.job.words}</p>
      <h3>Hazards found, what they can do, what will be done</h3>
      {findings.length === 0 && <p class="hint">Nothing on the findings sheet yet. What you call there stands here.</p>}
      <ol class="carried">
        {findings.map((finding) => {
          const about = `${nameOf(world, finding.on)}: ${conditionLabel(finding.condition)}`;
          return (
            <li key={finding.id}>
              <p class="name">{capital(about)}</p>
              <Plans playing={playing} finding={finding.id} about={about} />
            </li>
          );
        })}
      </ol>
      <h3>For the whole job</h3>
      <Plans playing={playing} finding={null} about="the whole job" />
      <h3>Briefing</h3>
      {held.map((words) => (
        <p key={words}>
          <span class="stamp">Held</span> {words}
        </p>
      ))}
      <Hold playing={playing} />
      <p>
        <button type="button" onClick={() => printSheet(<BriefingSheet world={world} />)}>
          Print this sheet
        </button>
      </p>
    </>
  );
};
