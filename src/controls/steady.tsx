import { Component, type FunctionComponent } from 'preact';

/** A part that is drawn anew only when one of its props is another: for parts beside the change. */
export function steady<Props extends object>(Part: FunctionComponent<Props>) {
  return class Steady extends Component<Props> {
    override shouldComponentUpdate(next: Props) {
      const keys = Object.keys(next) as (keyof Props)[];
      return keys.some((key) => next[key] !== this.props[key]);
    }

    override render(props: Props) {
      return <Part {...props} />;
    }
  };
}
