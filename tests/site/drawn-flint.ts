import sharp, { type Sharp } from 'sharp';

/** A worked flint on a grey ground, drawn: invented, of nothing that was ever dug. Its ends are at 15 and 85 of 100 across. */
const FLINT = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 75" width="100" height="75">
  <defs>
    <linearGradient id="ground" x1="0" y1="0" x2="0.3" y2="1"><stop offset="0" stop-color="#b9bcbd"/><stop offset="1" stop-color="#8d9091"/></linearGradient>
    <linearGradient id="stone" x1="0" y1="0" x2="1" y2="1"><stop offset="0" stop-color="#7b7267"/><stop offset="0.5" stop-color="#4d463f"/><stop offset="1" stop-color="#2b2723"/></linearGradient>
    <filter id="soft"><feGaussianBlur stdDeviation="1.4"/></filter>
  </defs>
  <rect width="100" height="75" fill="url(#ground)"/>
  <path d="M16 41 C24 28 44 21 58 24 C70 26 80 32 85 40 C79 50 66 55 52 56 C36 57 22 51 16 41Z" fill="#000" opacity="0.35" filter="url(#soft)" transform="translate(1.5 2.5)"/>
  <path d="M15 38 C24 25 44 18 58 21 C70 23 80 29 85 37 C79 47 66 52 52 53 C36 54 22 48 15 38Z" fill="url(#stone)"/>
  <path d="M15 38 L31 33 L46 36 L60 31 L74 35 L85 37 M31 33 L38 22 M46 36 L50 20 M60 31 L63 22 M31 33 L34 49 M46 36 L47 53 M60 31 L64 51 M74 35 L75 47 M74 35 L74 26" fill="none" stroke="#a49a8c" stroke-width="0.5"/>
  <path d="M38 22 L46 36 L50 20Z M60 31 L64 51 L74 35Z M15 38 L31 33 L34 49Z" fill="#9a8f80" opacity="0.35"/>
  <path d="M46 36 L47 53 L34 49Z M63 22 L74 26 L74 35Z" fill="#181512" opacity="0.4"/>
</svg>`;

/** A drawn picture of a flint as a large camera picture: grain over it, so that it weighs what a photograph does. */
export async function drawnFlint(widthPx: number, heightPx: number): Promise<Sharp> {
  const grain = await sharp({
    create: {
      width: widthPx,
      height: heightPx,
      channels: 3,
      background: '#808080',
      noise: { type: 'gaussian', mean: 128, sigma: 14 },
    },
  })
    .png()
    .toBuffer();
  const drawn = await sharp(Buffer.from(FLINT), { density: 72 * (widthPx / 100) })
    .resize(widthPx, heightPx, { fit: 'fill' })
    .composite([{ input: grain, blend: 'overlay' }])
    .removeAlpha()
    .png()
    .toBuffer();
  return sharp(drawn);
}
