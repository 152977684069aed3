import { photoWords as words } from '#words/tape/photo-words.ts';
import { LoadNewer } from '../../controls/newer-part.tsx';
import { useLanding } from '../../controls/use-landing.ts';

interface Props {
  field: string | undefined;
  /** What went wrong, or is wrong with this phone. */
  said: string | undefined;
  /** The app's host has a newer build, and what was wanted is gone from it. */
  isOld: boolean;
  onFile: (file: Blob) => void;
  onLive: () => void;
  onLeave: () => void;
}

/** Where a photo comes from. */
export function Choose({ field, said, isOld, onFile, onLive, onLeave }: Props) {
  const landing = useLanding();
  return (
    <>
      <main class="intro" tabIndex={-1} ref={landing}>
        <h1>{words.title(field)}</h1>
        {said && (
          <p class="warning" role="alert">
            {said}
          </p>
        )}
        <p>{words.how}</p>
        <p class="soft">{words.stays}</p>
      </main>
      <div class="ways">
        <FileWay name={words.take} camera onFile={onFile} />
        <FileWay name={words.choose} onFile={onFile} />
        <button type="button" onClick={onLive}>
          {words.live}
        </button>
        <button type="button" onClick={onLeave}>
          {words.back}
        </button>
        {isOld && <LoadNewer />}
      </div>
    </>
  );
}

interface WayProps {
  name: string;
  /** The camera app instead of the photos kept. */
  camera?: boolean;
  onFile: (file: Blob) => void;
}

function FileWay({ name, camera = false, onFile }: WayProps) {
  return (
    <label class={camera ? 'main' : ''}>
      {name}
      <input
        class="unseen"
        type="file"
        accept="image/*"
        capture={camera ? 'environment' : undefined}
        onChange={({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          // The same file again is to be a change, too.
          currentTarget.value = '';
          if (file) onFile(file);
        }}
      />
    </label>
  );
}
