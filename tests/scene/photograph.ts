/** Takes the picture as the browser shows it, and what can be said of its pixels. */
import { page } from 'vitest/browser';

/** The pixels of an element, as shown. */
export const photograph = async (element: HTMLElement): Promise<ImageData> => {
  const base64 = await page.elementLocator(element).screenshot({ save: false });
  const image = new Image();
  image.src = `data:image/png;base64,${base64}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth;
  canvas.height = image.naturalHeight;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas to read a photograph on');
  context.drawImage(image, 0, 0);
  return context.getImageData(0, 0, canvas.width, canvas.height);
};

const grey = ({ data }: ImageData, i: number): number =>
  ((data[i] as number) + (data[i + 1] as number) + (data[i + 2] as number)) / 3;

/** Standard deviation of brightness, 0 to 255. */
export const spread = (picture: ImageData): number => {
  const n = picture.data.length / 4;
  let sum = 0;
  let squares = 0;
  for (let i = 0; i < picture.data.length; i += 4) {
    const g = grey(picture, i);
    sum += g;
    squares += g * g;
  }
  return Math.sqrt(Math.max(0, squares / n - (sum / n) ** 2));
};

/** Mean brightness of a few pixels about the middle height, at a share of the width. */
export const column = (picture: ImageData, share: number): number => {
  const { width, height } = picture;
  const x = Math.min(width - 2, Math.max(1, Math.round(width * share)));
  let sum = 0;
  let n = 0;
  for (let y = Math.round(height * 0.48); y < height * 0.52; y++) {
    for (const dx of [-1, 0, 1]) {
      sum += grey(picture, (y * width + x + dx) * 4);
      n++;
    }
  }
  return sum / n;
};
