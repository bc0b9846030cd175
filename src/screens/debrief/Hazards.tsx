/** Every hazard's cause: found or missed, from where it could have been made out, what it can do, what holds it. */
import type { HazardCard } from '../../engine/debrief/types.ts';
import { capital } from '../words.ts';
import { Severity } from './Severity.tsx';

const Lines = ({ title, lines }: { title: string; lines: readonly string[] }) =>
  lines.length === 0 ? null : (
    <>
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );

const Card = ({ card }: { card: HazardCard }) => (
  <details class="card">
    <summary>
      <span class={`stamp ${card.found ? 'found' : 'missed'}`}>{card.found ? 'Found' : 'Missed'}</span>{' '}
      <Severity of={card.severity} /> <b>{capital(card.title)}</b>, {card.part}
      <span class="when">
        {card.when} {card.found ? '' : card.couldBeSeen[0]}
      </span>
    </summary>
    <Lines title={card.found ? 'Could be made out' : 'Could have been made out'} lines={card.couldBeSeen} />
    <Lines title="What it can do" lines={card.wouldDo} />
    <Lines title="What holds it" lines={card.controls} />
    <p class="fine">Source: {card.rule}</p>
  </details>
);

export const Hazards = ({ cards, lookAlikes }: { cards: readonly HazardCard[]; lookAlikes: readonly string[] }) => (
  <section aria-labelledby="hazards">
    <h2 id="hazards">
      Hazards{' '}
      <span class="note">
        {cards.filter(({ found }) => found).length} of {cards.length} found
      </span>
    </h2>
    {cards.map((card) => (
      <Card key={card.cause} card={card} />
    ))}
    {lookAlikes.length > 0 && (
      <>
        <h3>What only looked wrong</h3>
        <ul>
          {lookAlikes.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </>
    )}
  </section>
);
