import type { PaperServices } from '../../controls/paper-services.ts';

// What makes and hands over files is fetched when it is asked for: choosing comes before.
const loadFiles = () => import('./save-file.ts');
/** What putting on paper asks of this phone. */
export const PAPER_SERVICES: PaperServices = {
  makePdf: (...job) => import('./paper-maker.ts').then((maker) => maker.makePdf(...job)),
  save: (name, file) => loadFiles().then(({ saveFile }) => saveFile(name, file)),
  share: canShare()
    ? (name, file) => loadFiles().then(({ shareFile }) => shareFile(name, file))
    : undefined,
};

/** Whether the phone takes files of this kind from an app. */
function canShare(): boolean | undefined {
  const probe = new File([''], 'template.pdf', { type: 'application/pdf' });
  return navigator.canShare?.({ files: [probe] });
}
