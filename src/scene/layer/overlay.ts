/**
 * The transparent layer above the world: the glow of the lamp in the fog, the round field of the glass, the outline
 * and name of what is pointed at. Phaser draws it and runs the loop.
 */
import * as Phaser from 'phaser';
import { Falling, type Falls } from './falling.ts';
import type { Spot } from './hull.ts';

const paper = 0xf4efe2;
const ink = 0x1b1f26;

/** What the layer is to show of the present moment. */
export interface Shown {
  /** Strength of the fog, 0 to 1. */
  readonly fog: number;
  readonly lamp: boolean;
  readonly glass: boolean;
  /** Outline of what is pointed at, pixels, and its name. */
  readonly outline: readonly Spot[];
  readonly label: string | null;
  readonly labelAt: Spot | null;
  /** A ring in the middle for those who look around by keys. */
  readonly ring: boolean;
  /** What falls, and the seconds since it was last shown. */
  readonly falls: Falls;
  readonly seconds: number;
}

/** Paints a canvas texture once. */
const paint = (
  textures: Phaser.Textures.TextureManager,
  key: string,
  width: number,
  height: number,
  work: (context: CanvasRenderingContext2D) => void,
): void => {
  if (textures.exists(key)) textures.remove(key);
  const texture = textures.createCanvas(key, width, height);
  if (!texture) throw new Error(`no canvas for ${key}`);
  work(texture.getContext());
  texture.refresh();
};

const veil = (c: CanvasRenderingContext2D): void => {
  const g = c.createRadialGradient(128, 128, 0, 128, 128, 128);
  g.addColorStop(0, 'rgba(255,248,232,0.9)');
  g.addColorStop(0.35, 'rgba(255,246,228,0.42)');
  g.addColorStop(1, 'rgba(255,244,224,0)');
  c.fillStyle = g;
  c.fillRect(0, 0, 256, 256);
};

export class Overlay extends Phaser.Scene {
  private glow: Phaser.GameObjects.Image | null = null;
  private mask: Phaser.GameObjects.Image | null = null;
  private lines: Phaser.GameObjects.Graphics | null = null;
  private label: Phaser.GameObjects.Text | null = null;
  private falling: Falling | null = null;
  private readonly onStep: (ms: number) => void;
  private readonly onReady: (scene: Overlay) => void;

  constructor(onReady: (scene: Overlay) => void, onStep: (ms: number) => void) {
    super({ key: 'overlay' });
    this.onReady = onReady;
    this.onStep = onStep;
  }

  create(): void {
    paint(this.textures, 'veil', 256, 256, veil);
    this.glow = this.add.image(0, 0, 'veil').setBlendMode(Phaser.BlendModes.SCREEN);
    this.falling = new Falling(this);
    this.lines = this.add.graphics();
    this.mask = this.add.image(0, 0, 'veil').setVisible(false);
    this.label = this.add.text(0, 0, '', {
      fontFamily: 'system-ui, "Segoe UI", Roboto, Arial, sans-serif',
      fontSize: '15px',
      color: '#1b1f26',
      backgroundColor: '#f4efe2',
      padding: { x: 8, y: 4 },
    });
    this.label.setVisible(false);
    this.scale.on('resize', () => this.lay());
    this.lay();
    this.onReady(this);
  }

  override update(_time: number, ms: number): void {
    this.onStep(ms);
  }

  /** Fits everything to the window. */
  private lay(): void {
    const { width, height } = this.scale;
    if (!this.mask || !this.glow) return;
    this.glow.setPosition(width / 2, height / 2).setDisplaySize(height * 1.25, height * 1.25);
    const w = Math.max(2, Math.round(width));
    const h = Math.max(2, Math.round(height));
    paint(this.textures, 'glass', w, h, (c) => {
      c.fillStyle = '#050607';
      c.fillRect(0, 0, w, h);
      const r = Math.min(w, h) * 0.485;
      const g = c.createRadialGradient(w / 2, h / 2, r * 0.9, w / 2, h / 2, r);
      g.addColorStop(0, 'rgba(0,0,0,1)');
      g.addColorStop(0.72, 'rgba(0,0,0,0.82)');
      g.addColorStop(1, 'rgba(0,0,0,0)');
      c.globalCompositeOperation = 'destination-out';
      c.fillStyle = g;
      c.fillRect(0, 0, w, h);
    });
    this.mask
      .setTexture('glass')
      .setPosition(w / 2, h / 2)
      .setDisplaySize(w, h);
  }

  show(shown: Shown): void {
    const { width, height } = this.scale;
    this.glow?.setVisible(shown.lamp).setAlpha(0.2 * shown.fog);
    this.mask?.setVisible(shown.glass);
    this.falling?.show(shown.falls, shown.seconds);
    this.drawLines(shown);
    const { label, labelAt } = shown;
    if (!this.label) return;
    this.label.setVisible(label !== null && labelAt !== null);
    if (label === null || labelAt === null) return;
    if (this.label.text !== label) this.label.setText(label);
    const x = Math.min(width - this.label.width - 6, Math.max(6, labelAt.x - this.label.width / 2));
    const y = Math.min(height - this.label.height - 6, Math.max(6, labelAt.y - this.label.height - 12));
    this.label.setPosition(Math.round(x), Math.round(y));
  }

  private drawLines({ outline, ring }: Shown): void {
    const { lines } = this;
    if (!lines) return;
    lines.clear();
    const { width, height } = this.scale;
    if (ring) {
      lines.lineStyle(3, ink, 0.5).strokeCircle(width / 2, height / 2, 11);
      lines.lineStyle(1.5, paper, 0.95).strokeCircle(width / 2, height / 2, 11);
    }
    if (outline.length < 2) return;
    const points = outline.map(({ x, y }) => new Phaser.Math.Vector2(x, y));
    lines.lineStyle(3.5, ink, 0.45).strokePoints(points, true);
    lines.lineStyle(1.5, paper, 0.95).strokePoints(points, true);
  }
}
