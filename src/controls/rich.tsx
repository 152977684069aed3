import './rich.css';

/** Text in which every fraction such as 5/8 is set as a true fraction. */
export function Rich({ text }: { text: string }) {
  const parts = text.split(/((?<![.,\d])\d+\/\d+)/);
  if (parts.length === 1) return <>{text}</>;
  return (
    <>
      {parts.map((part, i) => {
        if (i % 2 === 0) return part || null;
        const [over, under] = part.split('/');
        return (
          <span class="frac" key={i}>
            <span class="unseen">{part}</span>
            <sup aria-hidden="true">{over}</sup>
            <span aria-hidden="true">⁄</span>
            <sub aria-hidden="true">{under}</sub>
          </span>
        );
      })}
    </>
  );
}
