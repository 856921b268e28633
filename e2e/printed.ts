/** What came out of the printer: places on the paper, read from the PDF; and codes, read from the picture. */
import jsQR from 'jsqr';
import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import type { Locator, Page } from 'playwright/test';

export interface Box {
  page: number;
  xMm: number;
  yMm: number;
  widthMm: number;
  heightMm: number;
}

const MM = 25.4 / 72;
type Matrix = [number, number, number, number, number, number];
const times = (a: Matrix, b: Matrix): Matrix => [
  a[0] * b[0] + a[2] * b[1],
  a[1] * b[0] + a[3] * b[1],
  a[0] * b[2] + a[2] * b[3],
  a[1] * b[2] + a[3] * b[3],
  a[0] * b[4] + a[2] * b[5] + a[4],
  a[1] * b[4] + a[3] * b[5] + a[5],
];

/** Every drawn path of a PDF as its bounding box in millimetres from the top left corner of its page. */
export async function boxesOf(pdf: Buffer): Promise<{ paper: { widthMm: number; heightMm: number }[]; boxes: Box[] }> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const boxes: Box[] = [];
  const paper: { widthMm: number; heightMm: number }[] = [];
  for (let page = 0; page < document.numPages; page++) {
    const sheet = await document.getPage(page + 1);
    const { width, height } = sheet.getViewport({ scale: 1 });
    paper.push({ widthMm: width * MM, heightMm: height * MM });
    const { fnArray, argsArray } = await sheet.getOperatorList();
    let now: Matrix = [1, 0, 0, 1, 0, 0];
    const kept: Matrix[] = [];
    for (const [i, fn] of fnArray.entries()) {
      if (fn === OPS.save) kept.push(now);
      else if (fn === OPS.restore) now = kept.pop() ?? now;
      else if (fn === OPS.transform) now = times(now, argsArray[i] as Matrix);
      else if (fn === OPS.constructPath) {
        const extent = argsArray[i][2] as ArrayLike<number> | null;
        if (!extent) continue;
        const xs = [extent[0], extent[2]].map((x) => now[0] * (x as number) + now[4]);
        const ys = [extent[1], extent[3]].map((y) => height - (now[3] * (y as number) + now[5]));
        boxes.push({
          page,
          xMm: Math.min(...xs) * MM,
          yMm: Math.min(...ys) * MM,
          widthMm: Math.abs((xs[1] as number) - (xs[0] as number)) * MM,
          heightMm: Math.abs((ys[1] as number) - (ys[0] as number)) * MM,
        });
      }
    }
  }
  return { paper, boxes };
}

/** Words of a PDF with their type size in points. */
export async function wordsOf(pdf: Buffer): Promise<{ pages: number; words: { text: string; pt: number }[] }> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const words: { text: string; pt: number }[] = [];
  for (let page = 1; page <= document.numPages; page++)
    for (const item of (await (await document.getPage(page)).getTextContent()).items)
      if ('str' in item && item.str.trim() !== '')
        words.push({ text: item.str, pt: Math.hypot(item.transform[2], item.transform[3]) });
  return { pages: document.numPages, words };
}

/** The text of a QR code as a camera reads it from the screen's picture. */
export async function readCode(page: Page, at: Locator): Promise<string | null> {
  const png = (await at.screenshot({ scale: 'device' })).toString('base64');
  const picture = await page.evaluate(async (data) => {
    const image = new Image();
    image.src = `data:image/png;base64,${data}`;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.width;
    canvas.height = image.height;
    const brush = canvas.getContext('2d') as CanvasRenderingContext2D;
    brush.drawImage(image, 0, 0);
    const { data: pixels, width, height } = brush.getImageData(0, 0, image.width, image.height);
    return { pixels: [...pixels], width, height };
  }, png);
  return jsQR(Uint8ClampedArray.from(picture.pixels), picture.width, picture.height)?.data ?? null;
}
