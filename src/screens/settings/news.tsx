import { newsWords as words } from '#words/phone/news-words.ts';

/** What has changed in the app, on the phone with the rest of it. */
export function News() {
  return (
    <details class="news">
      <summary>{words.title}</summary>
      {words.releases.map(({ date, says }) => (
        <section key={date}>
          <h2>{date}</h2>
          <ul>
            {says.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ul>
        </section>
      ))}
    </details>
  );
}
