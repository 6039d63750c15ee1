using TrialKit.Reporting.Document;

namespace TrialKit.Reporting.Sheets.Teaching;

/// <summary>One line of a key: what is worked out, how, and what it comes to.</summary>
/// <param name="Id">A name of its own within the exercise, such as <c>mean</c> or <c>d3</c>.</param>
/// <param name="Label">What is worked out.</param>
/// <param name="Work">The working with its numbers.</param>
/// <param name="Answer">The answer as a student has it.</param>
/// <param name="Full">The answer when nothing is rounded on the way.</param>
public sealed record KeyStep(string Id, string Label, string Work, string Answer, string Full)
{
    // What is left of differences that are zero.
    private const double Dust = 1e-11;

    /// <summary>The number behind the answer; null when the answer is in words.</summary>
    public Rounded? Number { get; private init; }

    /// <summary>A number.</summary>
    /// <param name="id">A name of its own within the exercise.</param>
    /// <param name="label">What is worked out.</param>
    /// <param name="work">The working.</param>
    /// <param name="value">The number, rounded as a student writes it.</param>
    public static KeyStep Of(string id, string label, string work, Rounded value) =>
        new(id, label, work, value.Text, NumberText.Full(Math.Abs(value.Exact) < Dust ? 0 : value.Exact)) { Number = value };

    /// <summary>An answer in words, which depends on numbers.</summary>
    /// <param name="id">A name of its own within the exercise.</param>
    /// <param name="label">What is asked.</param>
    /// <param name="work">Why it is so.</param>
    /// <param name="answer">The answer from the numbers on paper.</param>
    /// <param name="full">The answer from numbers that were not rounded.</param>
    public static KeyStep Words(string id, string label, string work, string answer, string full) => new(id, label, work, answer, full);

    /// <summary>A yes or no that a comparison of two numbers decides.</summary>
    /// <param name="id">A name of its own within the exercise.</param>
    /// <param name="label">What is asked.</param>
    /// <param name="work">Why it is so.</param>
    /// <param name="first">The one number.</param>
    /// <param name="second">The other.</param>
    /// <param name="above">The answer when the first is larger.</param>
    /// <param name="notAbove">The answer when it is not.</param>
    public static KeyStep Comparison(string id, string label, string work, Rounded first, Rounded second, string above, string notAbove) =>
        Words(id, label, work, first.Written > second.Written ? above : notAbove, first.Exact > second.Exact ? above : notAbove);
}
