/** The proof of a scenario, worked out here beside the page: what holds, what fails, what is not known, par, traps. */
import type { Act } from '../../engine/acts/types.ts';
import type { Claim } from '../../engine/proof/types.ts';
import { Caution } from '../parts/Caution.tsx';
import { OwnScenario } from '../parts/OwnScenario.tsx';
import type { Desk, Offered, Prover, Proving } from '../types.ts';

const stages = ['survey', 'route', 'par', 'traps', 'claims'] as const;

const stageWords: Readonly<Record<(typeof stages)[number], string>> = {
  survey: 'surveying the scene',
  route: 'looking for a safe route',
  par: 'making it shorter',
  traps: 'trying every act at every stand',
  claims: 'summing up',
};

const Running = ({ proving, prover }: { proving: Extract<Proving, { is: 'running' }>; prover: Prover }) => {
  const { progress, title } = proving;
  return (
    <div role="status">
      <p>
        {title}: {progress === null ? 'starting' : stageWords[progress.stage]}
        {progress !== null && `, ${progress.states} scenes, ${progress.transitions} acts looked at`}
      </p>
      <progress max={stages.length} value={progress === null ? 0 : stages.indexOf(progress.stage)} aria-label="Proof" />{' '}
      <button type="button" onClick={() => prover.cancel()}>
        Cancel
      </button>
    </div>
  );
};

/** Opens the drill as it stands after the acts that show something. */
type See = (acts: readonly Act[]) => void;

const SeeIt = ({ acts, see, what }: { acts: readonly Act[]; see: See; what: string }) =>
  acts.length === 0 ? null : (
    <>
      {' '}
      <button type="button" class="slim" onClick={() => see(acts)}>
        See it<span class="sr-only">: {what}</span>
      </button>
    </>
  );

const Claims = ({ head, claims, see }: { head: string; claims: readonly Claim[]; see: See }) =>
  claims.length === 0 ? null : (
    <section>
      <h3>{head}</h3>
      <ul>
        {claims.map(({ id, words, acts }) => (
          <li key={id}>
            {words}
            <SeeIt acts={acts} see={see} what={words} />
          </li>
        ))}
      </ul>
    </section>
  );

const Done = ({ proving, see }: { proving: Extract<Proving, { is: 'done' }>; see: See }) => {
  const { claims, par, traps, states, transitions, seconds } = proving.proof;
  const by = (outcome: Claim['outcome']): readonly Claim[] => claims.filter((claim) => claim.outcome === outcome);
  return (
    <section aria-labelledby="proved">
      <h2 id="proved">{proving.title}</h2>
      <p role="status">
        {by('holds').length} of {claims.length} claims hold. {states} scenes and {transitions} acts were looked at in{' '}
        {Math.round(seconds)} seconds.
      </p>
      {par !== null && (
        <p>
          Par: {par.end === 'restored' ? 'restored' : 'handed over'} in {par.minutes} minutes and {par.customerMinutes}{' '}
          customer-minutes; no such route can be under {par.atLeast} minutes.
        </p>
      )}
      <p class="note">
        “See it” opens the drill as it stands after the acts that show it, as practice beside any scored drill.
      </p>
      <Claims head="Fails" claims={by('fails')} see={see} />
      <Claims head="Not finished" claims={by('not finished')} see={see} />
      {traps.length > 0 && (
        <section>
          <h3>The shortest traps</h3>
          <ol>
            {traps.map(({ hazard, minutes, words, acts }) => (
              <li key={hazard}>
                At {minutes} min: {words}
                <SeeIt acts={acts} see={see} what={words} />
              </li>
            ))}
          </ol>
        </section>
      )}
      <details>
        <summary>What holds</summary>
        <Claims head="Holds" claims={by('holds')} see={see} />
      </details>
    </section>
  );
};

const Choice = ({ offered, prover }: { offered: readonly Offered[]; prover: Prover }) => (
  <ul class="buttons">
    {offered.map((each) => (
      <li key={each.hash}>
        <button type="button" onClick={() => prover.start(each)}>
          Prove: {each.scenario.title}
        </button>
      </li>
    ))}
  </ul>
);

/** Proofs give hazards and routes away: for whoever writes or checks scenarios. */
export const ProofPage = ({ desk, prover, back }: { desk: Desk; prover: Prover; back: () => void }) => {
  const proving = prover.state.value;
  const leave = (): void => {
    prover.cancel();
    back();
  };
  return (
    <main class="desk">
      <div class="sheet paper form">
        <header class="letterhead">
          <h1>Proof of a scenario</h1>
          <p>For instructors: it gives away what is wrong and the way through.</p>
          <button type="button" onClick={leave}>
            Back
          </button>
        </header>
        <Caution />
        {proving.is === 'done' && <Done proving={proving} see={(acts) => desk.openMoment(proving.offered, acts)} />}
        {proving.is === 'running' ? (
          <Running proving={proving} prover={prover} />
        ) : (
          <>
            <section aria-labelledby="library">
              <h2 id="library">A scenario of the library</h2>
              <Choice offered={[...desk.library, ...desk.shelf.value]} prover={prover} />
            </section>
            <section aria-labelledby="own">
              <h2 id="own">A scenario of your own</h2>
              <p>A scenario file, written by hand or saved here, is read and proved. It stays on this device.</p>
              <OwnScenario desk={desk} opened={(offered) => prover.start(offered)} />
            </section>
          </>
        )}
        {proving.is === 'failed' && (
          <p class="problem" role="alert">
            The proof did not run: {proving.why}
          </p>
        )}
      </div>
    </main>
  );
};
