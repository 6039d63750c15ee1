using System.Reflection;

namespace TrialKit;

/// <summary>What every output says of the program that made it.</summary>
public static class Library
{
    /// <summary>The version as printed, such as <c>0.1.0</c>.</summary>
    public static string Version { get; } =
        typeof(Library).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
}
