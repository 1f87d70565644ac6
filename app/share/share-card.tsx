import { ImageResponse } from 'next/og';

/** A picture with a title over it, of the size that places ask for where links are shared. */
export function shareCard(of: string, title: string, svg: string): Response {
  const src = `data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`;
  return new ImageResponse(
    <div
      style={{
        display: 'flex',
        flexDirection: 'column',
        width: '100%',
        height: '100%',
        padding: '36px 56px',
        background: '#f4f0e8',
        color: '#22272b',
      }}
    >
      <div style={{ display: 'flex', fontSize: 30, color: '#a4432a' }}>{`Read the Wall · ${of}`}</div>
      <div style={{ display: 'flex', fontSize: 54, margin: '4px 0 20px' }}>{title}</div>
      {/* biome-ignore lint/performance/noImgElement: drawn into a picture, not onto a page */}
      <img src={src} alt="" width={1088} height={430} style={{ objectFit: 'contain' }} />
    </div>,
    { width: 1200, height: 630 },
  );
}
