import { describe, expect, test } from 'vitest';
import { createPhotos, mostPhotos, photosFrom, photosText } from '../../../src/screens/photos/createPhotos.ts';
import type { Photo } from '../../../src/screens/photos/types.ts';

const shot: Omit<Photo, 'id'> = {
  image: 'data:image/jpeg;base64,/9j/4AAQ',
  minute: 4,
  stand: 'p2.road',
  aid: 'lamp',
  part: 'p2.insulator',
  finding: null,
};

describe('the photos of a drill', () => {
  test('lie beside the finding that they are put to, and beside none again', () => {
    const photos = createPhotos();
    photos.add(shot);
    photos.putBeside('p1', 'f1');
    expect(photos.taken.value[0]?.finding).toBe('f1');
    photos.putBeside('p1', null);
    expect(photos.taken.value[0]?.finding).toBeNull();
  });

  test('never share a name, not even after one was deleted and the drill was gone on with', () => {
    const photos = createPhotos();
    photos.add(shot);
    photos.add(shot);
    photos.drop('p1');
    const again = createPhotos(photos.taken.value);
    again.add(shot);
    expect(again.taken.value.map(({ id }) => id)).toEqual(['p2', 'p3']);
  });

  test('are refused when the phone is full', () => {
    const photos = createPhotos();
    for (let i = 0; i < mostPhotos; i++) expect(photos.add(shot)).toBe(true);
    expect(photos.add(shot)).toBe(false);
  });

  test('come back as they were kept, for their own drill alone', () => {
    const photos = createPhotos();
    photos.add(shot);
    const text = photosText(photos.taken.value, 'hash-7');
    expect(photosFrom(text, 'hash-7')).toEqual(photos.taken.value);
    expect(photosFrom(text, 'hash-8')).toEqual([]);
  });

  test.each([
    ['torn text', '{"drill":"d","photos":[{"id"'],
    ['an address that is no JPEG', photosText([{ ...shot, id: 'p1', image: 'https://somewhere.example/a.jpg' }], 'd')],
    ['markup in the address', photosText([{ ...shot, id: 'p1', image: 'data:image/svg+xml;base64,PHN2Zz4=' }], 'd')],
    ['an aid that is none', photosText([{ ...shot, id: 'p1', aid: 'x-ray' as never }], 'd')],
  ])('leave out %s', (_what, text) => {
    expect(photosFrom(text, 'd')).toEqual([]);
  });
});
