namespace TrialKit.Fuzz.Corpus;

/// <summary>A sound file of a sound trial folder, which the cases damage.</summary>
/// <param name="Name">The subject in the tally.</param>
/// <param name="File">The file's name in its folder.</param>
/// <param name="Form">What the file is.</param>
/// <param name="Folder">Every file of the folder with its bytes.</param>
internal sealed record Subject(string Name, string File, SubjectForm Form, IReadOnlyDictionary<string, byte[]> Folder)
{
    /// <summary>The sound bytes.</summary>
    public byte[] Bytes => Folder[File];
}
