/** What is shown when the program itself fails: what happened, and that the log is kept. */
import { Component, type ComponentChildren } from 'preact';
import type { Desk } from './types.ts';

interface Props {
  readonly desk: Desk;
  readonly children: ComponentChildren;
}

export class Defect extends Component<Props, { readonly failed: string | null }> {
  override state = { failed: null };

  static override getDerivedStateFromError(error: unknown) {
    return { failed: error instanceof Error ? error.message : String(error) };
  }

  override componentDidCatch(error: unknown) {
    console.error(error);
  }

  override render({ desk, children }: Props) {
    const { failed } = this.state;
    if (failed === null) return children;
    const running = desk.playing.value !== null;
    return (
      <main class="desk">
        <div class="sheet paper" role="alert">
          <h1>This page failed</h1>
          <p>
            It said: “{failed}”. That is a mistake in the program, not in what you did.
            {running ? ' The log of your drill is whole; it holds every act up to now.' : ''}
          </p>
          <p class="buttons">
            {running && (
              <button type="button" onClick={() => desk.saveLog()}>
                Save the log as a file
              </button>
            )}
            <button type="button" class="primary" onClick={() => location.reload()}>
              Load the page again
            </button>
          </p>
        </div>
      </main>
    );
  }
}
