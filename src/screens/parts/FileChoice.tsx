/** A button that asks for a file; the field of the browser stands behind it, unseen. */
import { useRef } from 'preact/hooks';

interface FileChoiceProps {
  /** What the file is. */
  readonly label: string;
  readonly accept: string;
  /** Words on the button. */
  readonly words: string;
  readonly onFile: (file: File) => void;
}

export const FileChoice = ({ label, accept, words, onFile }: FileChoiceProps) => {
  const field = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={field}
        class="sr-only"
        type="file"
        tabIndex={-1}
        accept={accept}
        aria-label={label}
        onChange={(event) => {
          const [first] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (first) onFile(first);
        }}
      />
      <button type="button" onClick={() => field.current?.click()}>
        {words}
      </button>
    </>
  );
};
