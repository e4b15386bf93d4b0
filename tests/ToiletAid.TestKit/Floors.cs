using System.Reflection;
using System.Reflection.Emit;
using System.Text.RegularExpressions;

namespace ToiletAid.TestKit;

/// <summary>Floors of a project, lowest first, one for each folder: a floor may use those below it and none above.</summary>
public sealed partial class Floors
{
    private readonly Assembly _assembly;
    private readonly string _root;
    private readonly string[] _lowestFirst;

    /// <summary>Makes the floors.</summary>
    /// <param name="assembly">The compiled project.</param>
    /// <param name="root">Its root namespace, which is also its folder.</param>
    /// <param name="lowestFirst">Names of its folders.</param>
    public Floors(Assembly assembly, string root, params string[] lowestFirst) => (_assembly, _root, _lowestFirst) = (assembly, root, lowestFirst);

    /// <summary>Folders that the list forgets, and names in it that are no folder.</summary>
    public IEnumerable<string> Unlisted()
    {
        var folders = _assembly.GetTypes().Select(Floor).OfType<string>().ToHashSet(StringComparer.Ordinal);
        folders.SymmetricExceptWith(_lowestFirst);
        return folders.Order(StringComparer.Ordinal);
    }

    /// <summary>Every use of a higher floor: in compiled signatures and bodies, and by a using line, which also shows constants.</summary>
    public IEnumerable<string> Upward() => Uses()
        .Where(u => Array.IndexOf(_lowestFirst, u.Used) > Array.IndexOf(_lowestFirst, u.User))
        .Select(u => $"{u.User} uses {u.Used}: {u.Where}").Distinct().Order(StringComparer.Ordinal);

    /// <summary>Floors of this project that a floor uses.</summary>
    public IEnumerable<string> UsedBy(string floor) => Uses().Where(u => u.User == floor).Select(u => u.Used).Distinct().Order(StringComparer.Ordinal);

    private IEnumerable<(string User, string Used, string Where)> Uses()
    {
        foreach (var type in _assembly.GetTypes().Where(t => Floor(t) is not null))
        {
            foreach (var used in UsedTypes(type).SelectMany(Parts).Where(u => u.Assembly == _assembly))
            {
                if (Floor(used) is { } floor && floor != Floor(type))
                {
                    yield return (Floor(type)!, floor, $"{Outermost(type).Name} uses {Outermost(used).Name}");
                }
            }
        }

        foreach (string floor in _lowestFirst)
        {
            string folder = Repository.Path("src", _root, floor);
            foreach (string file in Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories))
            {
                foreach (Match line in Using().Matches(File.ReadAllText(file)))
                {
                    if (line.Groups["root"].Value == _root && line.Groups["floor"].Value is var used && used != floor)
                    {
                        yield return (floor, used, $"{Path.GetFileName(file)} has a using line");
                    }
                }
            }
        }
    }

    private string? Floor(Type type) =>
        type.Namespace is { } name && name.StartsWith(_root + ".", StringComparison.Ordinal) ? name[(_root.Length + 1)..].Split('.')[0] : null;

    private static Type Outermost(Type type) => type.DeclaringType is { } outer ? Outermost(outer) : type;

    private static IEnumerable<Type> UsedTypes(Type type)
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        IEnumerable<Type?> bare = [type.BaseType, .. type.GetInterfaces(), .. type.GetFields(all).Select(f => f.FieldType)];
        MethodBase[] methods = [.. type.GetMethods(all), .. type.GetConstructors(all)];
        return bare.OfType<Type>().Concat(methods.SelectMany(m => Signature(m).Concat(Body(m))));
    }

    private static IEnumerable<Type> Signature(MethodBase method) =>
        [.. method.GetParameters().Select(p => p.ParameterType), .. method is MethodInfo m ? [m.ReturnType] : Type.EmptyTypes];

    private static IEnumerable<Type> Body(MethodBase method)
    {
        if (method.GetMethodBody() is not { } body)
        {
            yield break;
        }

        foreach (var local in body.LocalVariables)
        {
            yield return local.LocalType;
        }

        foreach (int token in Tokens(body.GetILAsByteArray()!))
        {
            Type[] of = method.DeclaringType!.GetGenericArguments(), its = method.IsGenericMethod ? method.GetGenericArguments() : [];
            var member = method.Module.ResolveMember(token, of, its)!;
            IEnumerable<Type?> named = member switch
            {
                Type t => [t],
                MethodBase m => [m.DeclaringType, .. m.IsGenericMethod ? m.GetGenericArguments() : [], .. Signature(m)],
                FieldInfo f => [f.DeclaringType, f.FieldType],
                _ => [],
            };
            foreach (var one in named.OfType<Type>())
            {
                yield return one;
            }
        }
    }

    /// <summary>Tokens of types, methods and fields in compiled code.</summary>
    private static IEnumerable<int> Tokens(byte[] code) => CompiledCalls.Instructions(code)
        .Where(i => i.Code.OperandType is OperandType.InlineField or OperandType.InlineMethod or OperandType.InlineTok or OperandType.InlineType)
        .Select(i => BitConverter.ToInt32(code, i.Operand));

    private static IEnumerable<Type> Parts(Type type) => type.HasElementType ? Parts(type.GetElementType()!)
        : type.IsGenericParameter ? []
        : type.IsConstructedGenericType ? [type.GetGenericTypeDefinition(), .. type.GetGenericArguments().SelectMany(Parts)]
        : [type];

    [GeneratedRegex(@"^using (?:static |\w+ = )?(?<root>ToiletAid\.?\w*)\.(?<floor>\w+)[;.]", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 10_000)]
    private static partial Regex Using();
}
