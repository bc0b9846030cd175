/** What belongs to the view and not to the drill: a photo of it, and the whole screen for it. */
import { useEffect, useState } from 'preact/hooks';
import { takePhoto } from '../photos/takePhoto.ts';
import type { Playing } from '../types.ts';

/** Whether this browser can give a page the whole screen. */
const canFill = (): boolean => document.fullscreenEnabled === true;

export const ViewTools = ({ playing }: { playing: Playing }) => {
  const [filled, setFilled] = useState(document.fullscreenElement != null);
  useEffect(() => {
    const follow = (): void => setFilled(document.fullscreenElement != null);
    document.addEventListener('fullscreenchange', follow);
    return () => document.removeEventListener('fullscreenchange', follow);
  }, []);
  const fill = async (): Promise<void> => {
    try {
      if (document.fullscreenElement) await document.exitFullscreen();
      else await document.documentElement.requestFullscreen();
    } catch {
      playing.said.value = 'This browser does not give the page the whole screen.';
    }
  };
  return (
    <fieldset class="view-tools">
      <legend class="sr-only">The view</legend>
      {playing.camera.value !== null && (
        <button
          type="button"
          onClick={() => {
            playing.said.value = takePhoto(playing);
          }}
        >
          Photo
        </button>
      )}
      {canFill() && (
        <button type="button" aria-pressed={filled} onClick={fill}>
          Full screen
        </button>
      )}
    </fieldset>
  );
};
