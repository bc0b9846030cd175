/** Every hazard's cause: found or missed, from where it could have been made out, what it can do, what holds it. */
import { sameSigns, signLine, signWords } from '../../engine/debrief/hazardCards.ts';
import type { HazardCard } from '../../engine/debrief/types.ts';
import { capital } from '../words.ts';
import type { Vantage } from './moments.ts';
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

const Places = ({ card, jump }: { card: HazardCard; jump: (vantage: Vantage) => void }) => (
  <>
    <h3>{card.found ? 'Could be made out' : 'Could have been made out'}</h3>
    <ul class="places">
      {sameSigns(card.places).map((same) => (
        <li key={same[0]?.words}>
          <span class="not-printed">{signWords(same)}</span>
          <span class="print-only">{signLine(same)}</span>
          <span class="buttons not-printed">
            {same.flatMap(({ stand, from, aid, words }) =>
              stand === null || from === null || aid === null
                ? []
                : [
                    <button
                      key={stand}
                      type="button"
                      aria-label={`Go there and look: ${words}`}
                      onClick={() => jump({ stand, aid, part: card.on })}
                    >
                      {capital(from)}
                    </button>,
                  ],
            )}
          </span>
        </li>
      ))}
    </ul>
  </>
);

const Card = ({ card, jump }: { card: HazardCard; jump: (vantage: Vantage) => void }) => (
  <details class="card">
    <summary>
      <span class={`stamp ${card.found ? 'found' : 'missed'}`}>{card.found ? 'Found' : 'Missed'}</span>{' '}
      <Severity of={card.severity} /> <b>{capital(card.title)}</b>, {card.part}
      <span class="when">
        {card.when} {card.found ? '' : card.couldBeSeen[0]}
      </span>
    </summary>
    <Places card={card} jump={jump} />
    <Lines title="What it can do" lines={card.wouldDo} />
    <Lines title="What holds it" lines={card.controls} />
    <p class="fine">Source: {card.rule}</p>
  </details>
);

export interface HazardsProps {
  readonly cards: readonly HazardCard[];
  readonly lookAlikes: readonly string[];
  readonly jump: (vantage: Vantage) => void;
}

export const Hazards = ({ cards, lookAlikes, jump }: HazardsProps) => (
  <section aria-labelledby="hazards">
    <h2 id="hazards">
      Hazards{' '}
      <span class="note">
        {cards.filter(({ found }) => found).length} of {cards.length} found
      </span>
    </h2>
    {cards.length === 0 && <p>Nothing here could hurt anybody beyond the work itself.</p>}
    {cards.map((card) => (
      <Card key={card.cause} card={card} jump={jump} />
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
