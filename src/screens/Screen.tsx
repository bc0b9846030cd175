/** Which sheet lies on top: the start, the call, the scene or the debrief. */
import { CallScreen } from './CallScreen.tsx';
import { Defect } from './Defect.tsx';
import { DebriefScreen } from './debrief/DebriefScreen.tsx';
import { Front } from './Front.tsx';
import { OnScene } from './scene/OnScene.tsx';
import type { Desk } from './types.ts';

const Top = ({ desk }: { desk: Desk }) => {
  const playing = desk.playing.value;
  if (playing === null) return <Front desk={desk} />;
  const { stage, world, score } = playing.snapshot.value;
  if (stage === 'debrief' && score !== null) return <DebriefScreen desk={desk} playing={playing} />;
  if (world.truck.place === 'arriving') return <CallScreen desk={desk} playing={playing} />;
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
