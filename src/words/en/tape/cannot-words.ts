/** Why the picture gives no reading, and what would help. */
export const cannotWords = {
  'no-tape': 'No tape was found. Let it fill more of the picture, and lie flat.',
  'no-graduations': 'No graduations were found. Go nearer, with the light from the side.',
  'no-numbers': 'Graduations, but no numbers could be read. Take in at least three numbers.',
  'few-numbers': 'Too few numbers could be read to be sure. Take in at least three.',
  'numbers-disagree':
    'The numbers read do not agree with each other. Take one tape only, flat and whole.',
  'unit-unknown': 'It can’t be told what the numbers count. Take in more of the tape.',
  'too-small': 'The graduations are too small in the picture. Go nearer.',
  'too-blurred': 'The picture is too blurred. Hold still, and let the phone find its focus.',
  'too-dark': 'The picture is too dark. Bring more light.',
};
