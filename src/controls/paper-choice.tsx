import { adopt } from './adopt.ts';
import css from './paper.css?inline';

adopt(css);

interface Props {
  legend: string;
  name: string;
  options: Readonly<Record<string, string>>;
  chosen: string;
  onChoose: (value: string) => void;
}

/** One of several for the paper, each a press away. */
export function Choice({ legend, name, options, chosen, onChoose }: Props) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      {Object.entries(options).map(([value, label]) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            value={value}
            checked={value === chosen}
            onChange={() => onChoose(value)}
          />
          <span>{label}</span>
        </label>
      ))}
    </fieldset>
  );
}
