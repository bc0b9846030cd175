/** Hands a text to the person as a file. */
export const handOut = (name: string, text: string): void => {
  const url = URL.createObjectURL(
    new Blob([text], { type: name.endsWith('.json') ? 'application/json' : 'application/yaml' }),
  );
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
};
