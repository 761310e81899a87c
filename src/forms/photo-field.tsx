/** Photos with an entry: those already kept, each to be left out again, and a field for more. */
import { MOST_PHOTOS } from '../journal/index.ts'
import { Beside, type FormState, idOf } from './field.tsx'
import { useWords } from './spoken.ts'
import { many } from './typed.ts'

/** Whoever may see the page sees the photos; `hint` says who that is where it is not everybody. */
export const PhotoField = ({ form, hint }: { form: FormState; hint?: string | undefined }) => {
  const { forms } = useWords()
  const kept = many(form.typed, 'photos')
  return (
    <fieldset class="field photos" id={idOf('photos')}>
      <legend>{forms.photos}</legend>
      <Beside form={form} name="photos" label={forms.photos} hint={hint ?? forms.photosHint(MOST_PHOTOS)} />
      {kept.length === 0 ? null : (
        <div class="photo-strip">
          {kept.map((id, i) => (
            <label class="photo-kept">
              <img
                src={`/photos/${id}`}
                alt={forms.of(i + 1, kept.length)}
                width={96}
                height={96}
                loading="lazy"
              />
              <span>
                <input type="checkbox" name="photos" value={id} checked /> {forms.keep}
              </span>
            </label>
          ))}
        </div>
      )}
      <div class="photo-strip" id="photo-chosen" />
      <p class="small" id="photo-says" role="status" />
      <label class="unseen" for="photo-files">
        {forms.takePhotos}
      </label>
      <input id="photo-files" type="file" name="photo" accept="image/jpeg,image/png,image/webp" multiple />
      <JpegOnly />
    </fieldset>
  )
}

/** Whatever picture it is, the page draws it anew as a JPEG; without JavaScript it goes as it is, so that is said beside the field. */
export const JpegOnly = () => {
  const { forms } = useWords()
  return (
    <noscript>
      <span class="small">{forms.jpegOnly}</span>
    </noscript>
  )
}

/** Photos of an entry, small; each opens whole: in the journal on a page that leads back to its colony, `path`, else by itself. */
export const Photos = ({ ids, path }: { ids: readonly string[]; path?: string }) => {
  const { forms } = useWords()
  return ids.length === 0 ? null : (
    <p class="photo-strip">
      {ids.map((id, i) => (
        <a href={path === undefined ? `/photos/${id}` : `${path}/photo/${id}`}>
          <img
            src={`/photos/${id}`}
            alt={forms.seenThen(i + 1, ids.length)}
            width={96}
            height={96}
            loading="lazy"
          />
        </a>
      ))}
    </p>
  )
}
