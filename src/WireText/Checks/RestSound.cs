using WireText.Circuits;
using WireText.Electrical.Situations;
using WireText.Electrical.Sound;

namespace WireText.Checks;

/// <summary>Whether an instrument whose dials stand where they rest is heard in any position.</summary>
/// <param name="IsHeard">True when it is, and when that is not known.</param>
/// <param name="Silencing">Of an instrument that is not heard, the first dial that alone brings the sound back at 5; null for none.</param>
internal sealed record RestSound(bool IsHeard, Dial? Silencing)
{
    private static readonly RestSound Heard = new(IsHeard: true, null);

    public static RestSound OfDials(StudyContext context)
    {
        var unmuted = context.Study.Heard.Unmuted;
        if (unmuted.IsEmpty || unmuted.Any(one => one.Sounds || one.Sound.Outcome == Outcome.NotComputed))
        {
            return Heard;
        }

        return new RestSound(
            IsHeard: false,
            context.Circuit.Dials.FirstOrDefault(dial =>
                unmuted.Any(one =>
                    context.Study.Sounds.Of(one.State.At(dial, SituationOutcomes.Middle)).Outcome == Outcome.Sound
                )
            )
        );
    }
}
