using System.Reflection;
using System.Reflection.Emit;

namespace ToiletAid.TestKit;

/// <summary>Calls in compiled code, each with the text that stands right before it, which then is its last argument.</summary>
public static class CompiledCalls
{
    private static readonly Dictionary<int, OpCode> Codes = typeof(OpCodes).GetFields().Select(f => (OpCode)f.GetValue(null)!).ToDictionary(o => o.Value & 0xFFFF);

    /// <summary>Every call of a project.</summary>
    /// <param name="assembly">The compiled project.</param>
    /// <returns>Type and method that call, what is called, and the text before it or null.</returns>
    public static IEnumerable<(string Caller, MethodBase Called, string? Literal)> In(Assembly assembly)
    {
        const BindingFlags all = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;
        return from type in assembly.GetTypes()
               from method in type.GetMethods(all).Concat<MethodBase>(type.GetConstructors(all))
               where method.GetMethodBody() is not null
               from call in In(method)
               select ($"{type.Name}.{method.Name}", call.Called, call.Literal);
    }

    /// <summary>Instructions of compiled code: what each does and where its operand lies.</summary>
    internal static IEnumerable<(OpCode Code, int Operand)> Instructions(byte[] code)
    {
        for (int at = 0; at < code.Length;)
        {
            var op = code[at] == 0xFE ? Codes[0xFE00 | code[at + 1]] : Codes[code[at]];
            at += op.Size;
            yield return (op, at);
            at += op.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + (4 * BitConverter.ToInt32(code, at)),
                _ => 4,
            };
        }
    }

    private static IEnumerable<(MethodBase Called, string? Literal)> In(MethodBase method)
    {
        byte[] code = method.GetMethodBody()!.GetILAsByteArray()!;
        Type[] of = method.DeclaringType!.GetGenericArguments(), its = method.IsGenericMethod ? method.GetGenericArguments() : [];
        string? literal = null;
        foreach (var (op, operand) in Instructions(code))
        {
            if (op.OperandType == OperandType.InlineMethod)
            {
                yield return (method.Module.ResolveMethod(BitConverter.ToInt32(code, operand), of, its)!, literal);
            }

            literal = op == OpCodes.Ldstr ? method.Module.ResolveString(BitConverter.ToInt32(code, operand)) : null;
        }
    }
}
