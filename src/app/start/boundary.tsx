import { Component, type ComponentChildren } from 'preact';

import { appWords } from '#words/phone/app-words.ts';

/** Shows a sentence and a way back where a screen fails: never a blank page. */
export class Boundary extends Component<{ children: ComponentChildren }, { message?: string }> {
  static override getDerivedStateFromError(error: unknown) {
    return { message: String(error) };
  }

  override render() {
    const { message } = this.state;
    if (message === undefined) return this.props.children;
    return (
      <main class="waiting">
        <p role="alert">{appWords.broken(message)}</p>
        <button
          type="button"
          class="plain main"
          onClick={() => {
            location.hash = '';
            this.setState({ message: undefined as never });
          }}
        >
          {appWords.home}
        </button>
      </main>
    );
  }
}
