/** A drawing of the page as a PNG file, twice its size so that it prints well. Its colours stand in it, so nothing else is needed. */

const scale = 2;

const loaded = (url: string): Promise<HTMLImageElement> =>
  new Promise((resolve, reject) => {
    const image = new Image();
    image.onload = () => resolve(image);
    image.onerror = () => reject(new Error('the drawing could not be read'));
    image.src = url;
  });

/** The drawing's pixels as a PNG; its own width and height give the size. */
export const pngOf = async (drawing: SVGSVGElement): Promise<Blob> => {
  const text = new XMLSerializer().serializeToString(drawing);
  const image = await loaded(`data:image/svg+xml;charset=utf-8,${encodeURIComponent(text)}`);
  const canvas = document.createElement('canvas');
  canvas.width = scale * drawing.width.baseVal.value;
  canvas.height = scale * drawing.height.baseVal.value;
  const context = canvas.getContext('2d');
  if (context === null) throw new Error('this browser draws on no canvas');
  context.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob === null ? reject(new Error('no picture came of it')) : resolve(blob)), 'image/png');
  });
};

/** Hands the drawing to the person as a file. */
export const savePng = async (drawing: SVGSVGElement, name: string): Promise<void> => {
  const url = URL.createObjectURL(await pngOf(drawing));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
};
