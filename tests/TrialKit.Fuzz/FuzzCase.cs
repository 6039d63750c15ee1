using TrialKit.Fuzz.Corpus;
using TrialKit.Fuzz.Mutation;

namespace TrialKit.Fuzz;

/// <summary>One damaged file: the seed and the number of a case decide everything in it.</summary>
/// <param name="Number">The number of the case.</param>
/// <param name="Subject">The file that is damaged.</param>
/// <param name="Kind">What is damaged in it.</param>
/// <param name="Bytes">The damaged file.</param>
internal sealed record FuzzCase(long Number, Subject Subject, MutationKind Kind, byte[] Bytes)
{
    private const int Kinds = 3;

    /// <summary>The case of a number: subjects and kinds take turns, and all else is drawn.</summary>
    public static FuzzCase Of(IReadOnlyList<Subject> subjects, long seed, long number)
    {
        var subject = subjects[(int)(number / Kinds % subjects.Count)];
        var kind = (MutationKind)(number % Kinds);
        var random = new Random(Mix(seed, number));
        return new(number, subject, kind, Damage(subject, kind, random));
    }

    private static byte[] Damage(Subject subject, MutationKind kind, Random random) => (subject.Form, kind) switch
    {
        (SubjectForm.Workbook, _) => WorkbookDamage.Apply(subject.Bytes, kind, random),
        (_, MutationKind.Bytes) => ByteDamage.Apply(subject.Bytes, random),
        (_, MutationKind.Tokens) => TokenDamage.Apply(subject.Bytes, random),
        _ => StructureDamage.Apply(subject.Bytes, [.. subject.Folder.Values], random),
    };

    /// <summary>Seeds of neighbouring cases that have nothing in common.</summary>
    /// <remarks>Steele, G. L., Lea, D., Flood, C. H. (2014). Fast splittable pseudorandom number generators. OOPSLA 2014, 453-472.</remarks>
    private static int Mix(long seed, long number)
    {
        var mixed = unchecked(((ulong)seed * 0x9E3779B97F4A7C15UL) + ((ulong)number * 0xD1B54A32D192ED03UL) + 0x9E3779B97F4A7C15UL);
        mixed = unchecked((mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL);
        mixed = unchecked((mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL);
        return unchecked((int)(mixed ^ (mixed >> 31)));
    }
}
