/** The reference cards: one sheet each, with its calculator, its source and the caution. */
import type { ComponentType } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { UnitSystem } from '../../engine/units/formatQuantity.ts';
import { ApproachCard } from './ApproachCard.tsx';
import { ArcCard } from './ArcCard.tsx';
import { FuseCard } from './FuseCard.tsx';
import { GlovesCard } from './GlovesCard.tsx';
import { GroundsCard } from './GroundsCard.tsx';
import { SagCard } from './SagCard.tsx';
import { StepCard } from './StepCard.tsx';
import { SticksCard } from './SticksCard.tsx';

interface CardInputs {
  readonly system: UnitSystem;
  /** Day that fields for a day begin with, YYYY-MM-DD. */
  readonly today: string;
}

/** Cards by id, in the order of the index. */
export const cards: readonly {
  readonly id: string;
  readonly name: string;
  readonly Body: ComponentType<CardInputs>;
}[] = [
  { id: 'approach', name: 'Approach distance', Body: ApproachCard },
  { id: 'gloves', name: 'Gloves and sleeves', Body: GlovesCard },
  { id: 'sticks', name: 'Live-line tools', Body: SticksCard },
  { id: 'grounds', name: 'Protective grounds', Body: GroundsCard },
  { id: 'arc', name: 'Arc estimate', Body: ArcCard },
  { id: 'step', name: 'Step voltage', Body: StepCard },
  { id: 'fuses', name: 'Fuse links', Body: FuseCard },
  { id: 'sag', name: 'Sag', Body: SagCard },
];

export interface CardsPageProps {
  /** Units that answers are given in; fields take any. */
  readonly system: UnitSystem;
  /** Leaves the page. */
  readonly back: () => void;
  /** Card that lies on top first; the first one otherwise. */
  readonly first?: string;
  /** Day that fields for a day begin with; the device's own otherwise. */
  readonly today?: string;
}

const deviceDay = (): string => {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** The page; whoever wires it hands in the units of the settings and the way back. */
export const CardsPage = ({ system, back, first, today = deviceDay() }: CardsPageProps) => {
  const [id, setId] = useState(first ?? cards[0]?.id);
  const opened = useRef(false);
  const card = cards.find((each) => each.id === id) ?? cards[0];
  useEffect(() => {
    // Focus follows a choice to the card, not the page's first showing.
    if (opened.current) document.getElementById('card-title')?.focus();
    opened.current = true;
  }, [id]);
  return (
    <main class="desk cards-desk">
      <div class="sheet paper cards">
        <header class="letterhead cards-head">
          <h1>Reference cards</h1>
          <p class="buttons">
            <button type="button" onClick={() => print()}>
              Print this card
            </button>
            <button type="button" onClick={back}>
              Back to the start
            </button>
          </p>
        </header>
        <div class="cards-body">
          <nav aria-label="Cards">
            <ul>
              {cards.map(({ id: each, name }) => (
                <li key={each}>
                  <button
                    type="button"
                    aria-current={each === card?.id ? 'page' : undefined}
                    onClick={() => setId(each)}
                  >
                    {name}
                  </button>
                </li>
              ))}
            </ul>
          </nav>
          {card && <card.Body key={`${card.id} ${system}`} system={system} today={today} />}
        </div>
      </div>
    </main>
  );
};
