/** Which sheet lies on top: the start, the call, the scene or the debrief. */
import { useLayoutEffect } from 'preact/hooks';
import { CallScreen } from './CallScreen.tsx';
import { Defect } from './Defect.tsx';
import { DebriefScreen } from './debrief/DebriefScreen.tsx';
import { Front } from './Front.tsx';
import { OnScene } from './scene/OnScene.tsx';
import type { Desk, Playing } from './types.ts';

type Sheet = 'start' | 'call' | 'scene' | 'debrief';

const sheetOf = (playing: Playing | null): Sheet => {
  if (playing === null) return 'start';
  const { stage, world, score } = playing.snapshot.value;
  if (stage === 'debrief' && score !== null) return 'debrief';
  return world.truck.place === 'arriving' ? 'call' : 'scene';
};

const Top = ({ desk }: { desk: Desk }) => {
  const playing = desk.playing.value;
  const sheet = sheetOf(playing);
  // A fresh sheet is read from its top, however far down the last one was.
  useLayoutEffect(() => window.scrollTo(0, 0), [sheet]);
  if (playing === null) return <Front desk={desk} />;
  if (sheet === 'debrief') return <DebriefScreen desk={desk} playing={playing} />;
  if (sheet === 'call') return <CallScreen desk={desk} playing={playing} />;
  return <OnScene desk={desk} playing={playing} />;
};

const Trouble = ({ desk }: { desk: Desk }) => {
  if (desk.playing.value === null || desk.problem.value === null) return null;
  return (
    <div class="problem floating" role="alert">
      <p>{desk.problem.value}</p>
      <p class="buttons">
        <button type="button" onClick={() => desk.saveLog()}>
          Save the log as a file
        </button>
        <button
          type="button"
          onClick={() => {
            desk.problem.value = null;
          }}
        >
          Put it away
        </button>
      </p>
    </div>
  );
};

export const Screen = ({ desk }: { desk: Desk }) => (
  <Defect desk={desk}>
    <Top desk={desk} />
    <Trouble desk={desk} />
  </Defect>
);
