/** Under what it is kept which garment is open: its id, or nothing when the maker closed it. */
export const OPEN_KEY = 'open-garment';

/** Under what it is kept what the homes of garments last said. */
export const LAST_HOME_KEY = 'last-home';
