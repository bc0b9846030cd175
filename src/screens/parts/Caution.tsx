import { caution } from '../../engine/debrief/caution.ts';

/** The caution, word for word the same wherever it stands. */
export const Caution = () => (
  <aside class="caution" aria-label="Caution">
    <p class="signal caution-word">
      <span aria-hidden="true">⚠</span> Caution
    </p>
    <p>{caution} Scenes, people and places are invented.</p>
  </aside>
);
