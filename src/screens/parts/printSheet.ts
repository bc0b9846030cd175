/** Prints one sheet by itself: it is put on the page for as long as the print takes, and everything else is left out. */
import { type ComponentChild, render } from 'preact';

export const printSheet = (sheet: ComponentChild): void => {
  const host = document.createElement('div');
  host.className = 'print-host';
  document.body.append(host);
  render(sheet, host);
  document.body.classList.add('prints-sheet');
  const done = (): void => {
    window.removeEventListener('afterprint', done);
    document.body.classList.remove('prints-sheet');
    render(null, host);
    host.remove();
  };
  window.addEventListener('afterprint', done);
  window.print();
};
